using System.Collections;
using System.Reflection;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>
/// The whole public surface, every method with thousands of argument mixes from plausible to absurd: it answers with finite numbers or refuses with an
/// exception that names one of its parameters. Nothing else, and never NaN.
/// </summary>
public class SurfaceTests
{
    private const int TriesPerMethod = 400;

    private static readonly double[] Numbers = [0, -1, 1e-300, 1e-12, 1e-6, 0.02, 0.1, 0.15, 0.5, 1, 1.35, 3, 12, 50, 100, 250, 1e4, 1e7, 1e12, 1e300, -1e300, double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    private static readonly Dictionary<Type, object[]> Samples = new()
    {
        [typeof(double)] = [.. Numbers.Cast<object>()],
        [typeof(int)] = [int.MinValue, -3, 0, 1, 2, 7, 14, 40, 100, 1000, int.MaxValue],
        [typeof(bool)] = [true, false],
        [typeof(string)] = ["", "14 AWG", "2.5 mm²", "4/0", "14 SAE", "20 aircraft", "250 kcmil", "G4", "x", "1e999"],
        [typeof(AwgSize)] = [default(AwgSize), AwgSize.FromNumber(14), AwgSize.FromNumber(-3), AwgSize.FromNumber(40)],
        [typeof(KcmilSize)] = [KcmilSize.FromKcmil(250), KcmilSize.FromKcmil(1000)],
        [typeof(MetricSize)] = [default(MetricSize), MetricSize.FromSquareMillimeters(2.5), MetricSize.FromSquareMillimeters(0.13), MetricSize.FromSquareMillimeters(400)],
        [typeof(VehicleGaugeSize)] = [VehicleGaugeSize.FromNumber(14)],
        [typeof(AircraftWireSize)] = [AircraftWireSize.FromNumber(20)],
        [typeof(ConductorSize)] = [default(ConductorSize), ConductorSize.FromAwg(AwgSize.FromNumber(10))],
        [typeof(LinearResistance)] = [default(LinearResistance), LinearResistance.FromOhmsPerKilometer(8)],
        [typeof(JouleIntegral)] = [default(JouleIntegral), JouleIntegral.FromAmpereSquaredSeconds(100), JouleIntegral.FromAmpereSquaredSeconds(1e24)],
        [typeof(DutyCycle)] = [default(DutyCycle), DutyCycle.FromFraction(0.25)],
        [typeof(TimeCurrentPoint)] = [TimeCurrentPoint.Create(ElectricCurrent.FromAmperes(20), Duration.FromSeconds(10))],
        [typeof(Reference)] = [Reference.CommonPractice("a test")],
        [typeof(Conductor)] =
        [
            Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper), Conductor.Iso6722(MetricSize.FromSquareMillimeters(0.5)),
            ConductorSeries.AwgSolid.Conductors[3], ConductorSeries.RoadVehicle.Conductors[8], Conductor.OfArea(Area.FromSquareMillimeters(1000), ConductorMaterial.MildSteel), Conductor.AircraftWire(AircraftWireSize.FromNumber(20)),
        ],
        [typeof(Wire)] = [Wire.Create(Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6))],
        [typeof(WireBundle)] = [WireBundle.Create(Wire.Create(Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6)), 7, 3), WireBundle.Pair(Wire.Create(Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6))).InSleeve()],
        [typeof(Surroundings)] = [new Surroundings { Ambient = Temperature.FromDegreesCelsius(40) }, new Surroundings { Ambient = Temperature.FromDegreesCelsius(-60), Altitude = Length.FromMeters(15_000), Emissivity = 0 }, new Surroundings { Ambient = Temperature.FromDegreesCelsius(40), AirSpeed = Speed.FromMetersPerSecond(2) }],
        [typeof(Source)] =
        [
            Battery.LeadAcid(ElectricCurrent.FromAmperes(600)), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), ElectricCurrent.FromAmperes(100)),
            Source.Ideal(ElectricPotential.FromVolts(12)), Source.CurrentLimited(ElectricPotential.FromVolts(24), ElectricCurrent.FromAmperes(5)), Source.Ideal(ElectricPotential.FromVolts(72)),
        ],
        [typeof(Load)] =
        [
            Load.Resistance(ElectricResistance.FromOhms(2)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(8)), Load.ConstantPower(Power.FromWatts(300), 0.85, ElectricPotential.FromVolts(10.5)),
            Load.Lamp(Power.FromWatts(55), ElectricPotential.FromVolts(12)), Load.ConstantPower(Power.FromWatts(1e12)), Load.Resistance(ElectricResistance.FromOhms(1e-12)),
            Load.Motor(ElectricCurrent.FromAmperes(6), ElectricCurrent.FromAmperes(30), ElectricCurrent.FromAmperes(40), Duration.FromSeconds(0.3)),
        ],
        [typeof(NetworkElement)] =
        [
            NetworkElement.VoltageSource("S", "x", "14 AWG", ElectricPotential.FromVolts(12)), NetworkElement.Resistance("r", "x", "14 AWG", ElectricResistance.FromOhms(2)),
            NetworkElement.Resistance("q", "x", "4/0", ElectricResistance.Zero), NetworkElement.ConstantPower("p", "4/0", "14 AWG", Power.FromWatts(20)),
            NetworkElement.Current("i", "4/0", "x", ElectricCurrent.FromAmperes(1e6)), NetworkElement.VoltageSource("B", "x", "14 AWG", ElectricPotential.FromVolts(48), ElectricResistance.FromMilliohms(3)),
        ],
        [typeof(ResistiveNetwork)] =
        [
            ResistiveNetwork.Create("x", NetworkElement.VoltageSource("S", "14 AWG", "x", ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(0.1)), NetworkElement.Resistance("r", "x", "14 AWG", ElectricResistance.FromOhms(2))),
        ],
        [typeof(AmbientDerating)] = [AmbientDerating.Create("air factors", Reference.CommonPractice("a test"), [Temperature.FromDegreesCelsius(30), Temperature.FromDegreesCelsius(50)], [1, 0.8])],
        [typeof(GroupingDerating)] = [GroupingDerating.ByConductors("bundle factors", Reference.CommonPractice("a test"), [1, 4], [1, 0.7]), GroupingDerating.ByCircuits("loom factors", Reference.CommonPractice("a test"), [1, 3], [1, 0.7])],
        [typeof(Segment)] = [Segment.Create(Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper), Length.FromMeters(3), 2)],
        [typeof(Joint)] = [Joint.Create("crimp", ElectricResistance.FromOhms(0.001))],
        [typeof(Tap)] = [Tap.Create(Length.FromMeters(2), ElectricCurrent.FromAmperes(3))],
        [typeof(ReturnPath)] = [ReturnPath.Wire(Length.FromMeters(3)), ReturnPath.Chassis(ElectricResistance.FromOhms(0.002)), ReturnPath.Shared(ElectricResistance.FromOhms(0.01), ElectricCurrent.FromAmperes(20))],
        [typeof(ConductorTemperature)] = [ConductorTemperature.At(Temperature.FromDegreesCelsius(60))],
        [typeof(IFormatProvider)] = [System.Globalization.CultureInfo.InvariantCulture, System.Globalization.CultureInfo.GetCultureInfo("de-DE")],
        [typeof(object)] = ["text"],
    };

    // Their lists must rise, their factors begin where a table does, or their six numbers belong to one metal, which random ones do not; their own tests give them answers.
    private static readonly string[] NeedMatchingArguments = ["TimeCurrentCurve.Create", "AmbientRerating.Create", "AmbientDerating.Create", "GroupingDerating.ByConductors", "GroupingDerating.ByCircuits", "AmpacityBasis.FromTable", "ConductorMaterial.Create", "CircuitDocument.Read", "DesignDocument.Read", "HarnessDocument.Read", "HarnessResultDocument.Read", "FaultAuditDocument.Read", "HarnessDesignDocument.Read"];

    // What a quantity is usually like, for those whose unit is far from one.
    private static readonly Dictionary<Type, double> Usual = new()
    {
        [typeof(ElectricResistivity)] = 1.7e-8,
        [typeof(Density)] = 8890,
        [typeof(VolumetricHeatCapacity)] = 3.45e6,
        [typeof(Temperature)] = 70,
        [typeof(Area)] = 2.5e-6,
    };

    public static TheoryData<string> Methods => [.. AllMethods().Keys];

    [Theory, MemberData(nameof(Methods))]
    public void Method_AnyArguments_AnswersFinitelyOrNamesTheParameter(string name)
    {
        MethodInfo method = AllMethods()[name];
        Random random = new(name.Length * 7919);
        int answered = 0;
        bool ordered = NeedMatchingArguments.Contains(method.DeclaringType!.Name + "." + method.Name);
        for (int i = 0; i < TriesPerMethod || (answered == 0 && i < 100 * TriesPerMethod && !ordered); i++)
        {
            object?[] arguments = [.. method.GetParameters().Select(p => Pick(p.ParameterType, random))];
            object? self = method.IsStatic ? null : Pick(method.DeclaringType!, random);
            try
            {
                CheckFinite(method.Invoke(self, arguments), name, 0);
                answered++;
            }
            catch (TargetInvocationException e)
            {
                CheckRefusal(e.InnerException!, method);
            }
        }

        // A method that refuses everything it is given has not been tested: its samples above must be made richer.
        Assert.True(answered > 0 || ordered, $"{name} never answered");
    }

    internal static void CheckRefusal(Exception refusal, MethodInfo method)
    {
        string shown = $"{method.DeclaringType!.Name}.{method.Name}: {refusal.GetType().Name}: {refusal.Message}";
        switch (refusal)
        {
            case ArgumentException argument:
                // A With… method hands its argument to the property of the same name, which refuses it.
                Assert.True(method.GetParameters().Any(p => string.Equals(p.Name, argument.ParamName, StringComparison.OrdinalIgnoreCase)), $"{shown} names the parameter {argument.ParamName}");
                break;
            case FormatException:
                // Reading a text, or writing with a format that is none.
                Assert.True(method.Name is "Parse" or "ToString" or "Read", shown);
                break;
            default:
                // Our own named exceptions, and the reading of a point that does not exist.
                Assert.True(refusal.GetType().Namespace!.StartsWith("LowVoltage.Calc", StringComparison.Ordinal) || refusal is InvalidOperationException, shown + "\n" + refusal.StackTrace);
                break;
        }
    }

    internal static void CheckFinite(object? value, string path, int depth)
    {
        switch (value)
        {
            case null or string or Enum or bool:
                return;
            case double number:
                Assert.True(double.IsFinite(number), $"{path} is {number}");
                return;
            case IQuantity quantity:
                Assert.True(double.IsFinite((double)quantity.Value), $"{path} is {(double)quantity.Value}");
                return;
            case IEnumerable items:
                foreach (object? item in items.Cast<object?>().Take(20))
                {
                    CheckFinite(item, path + "[]", depth + 1);
                }

                return;
        }

        bool own = value.GetType().Namespace?.StartsWith("LowVoltage.Calc", StringComparison.Ordinal) == true;
        if (!own || depth > 3 || value is OperatingPoint { Exists: false } or ParallelSources { Exists: false } or ResistiveNetworkSolution { Exists: false } or CircuitRequirements or DesignRules)
        {
            return;
        }

        path = value is CheckResult check ? $"{path}({check.Kind})" : path;
        foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
        {
            CheckFinite(property.GetValue(value), $"{path}.{property.Name}", depth + 1);
        }
    }

    internal static Dictionary<string, MethodInfo> AllMethods()
    {
        Dictionary<string, MethodInfo> methods = new(StringComparer.Ordinal);
        foreach (Type type in typeof(Conductor).Assembly.GetExportedTypes().Where(t => IsOurs(t) && !t.IsEnum && !t.IsGenericTypeDefinition && !typeof(Exception).IsAssignableFrom(t)))
        {
            foreach (MethodInfo method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            {
                if (!method.IsSpecialName && !method.GetParameters().Any(p => p.ParameterType.IsByRefLike || p.ParameterType.IsPointer) && (method.IsStatic || CanMake(type))
                    && method.GetParameters().All(p => p.IsOut || CanMake(p.ParameterType)))
                {
                    methods[$"{type.Name}.{method.Name}({string.Join(',', method.GetParameters().Select(p => p.ParameterType.Name))})"] = method;
                }
            }
        }

        return methods;
    }

    // A tool that instruments the library adds types of its own.
    internal static bool IsOurs(Type type) => type.Namespace?.StartsWith("LowVoltage.Calc", StringComparison.Ordinal) == true;

    internal static bool CanMake(Type type) => TryPick(type, new Random(1), out _);

    internal static object? Pick(Type type, Random random) => TryPick(type, random, out object? value) ? value : null;

    private static bool TryPick(Type type, Random random, out object? value)
    {
        value = null;
        Type plain = type.IsByRef ? type.GetElementType()! : type;
        if (Nullable.GetUnderlyingType(plain) is { } underlying)
        {
            return TryPick(underlying, random, out value);
        }

        if (plain.IsEnum)
        {
            Array values = Enum.GetValues(plain);
            value = random.Next(8) == 0 ? Enum.ToObject(plain, 99) : values.GetValue(random.Next(values.Length));
            return true;
        }

        if (typeof(IQuantity).IsAssignableFrom(plain) && plain.IsValueType)
        {
            value = PickQuantity(plain, random);
            return true;
        }

        if (Samples.TryGetValue(plain, out object[]? samples))
        {
            value = samples[random.Next(samples.Length)];
            return true;
        }

        if (plain == typeof(CircuitRequirements))
        {
            value = PickRequirements(random);
            return true;
        }

        if (plain == typeof(CircuitPath))
        {
            value = CircuitPath.Create((Segment)Samples[typeof(Segment)][0], (ReturnPath)Pick(typeof(ReturnPath), random)!);
            return true;
        }

        if (plain == typeof(FuseRating))
        {
            IReadOnlyList<FuseRating> ratings = ((FuseSeries)Pick(typeof(FuseSeries), random)!).Ratings;
            value = ratings[random.Next(ratings.Count)];
            return true;
        }

        if (Element(plain) is { } element)
        {
            Array array = Array.CreateInstance(element, random.Next(4));
            bool all = true;
            for (int i = 0; i < array.Length; i++)
            {
                all &= TryPick(element, random, out object? item);
                array.SetValue(item, i);
            }

            value = array;
            return all && CanMake(element);
        }

        object[] made = WellKnown(plain);
        value = made.Length > 0 ? made[random.Next(made.Length)] : null;
        return made.Length > 0;
    }

    private static Type? Element(Type type) =>
        type.IsArray ? type.GetElementType() : type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) ? type.GetGenericArguments()[0] : null;

    // Ready-made objects: public static properties of the type itself, or of the library where they return it.
    private static object[] WellKnown(Type type) => Known.GetOrAdd(type, static type => [.. FindWellKnown(type)]);

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<Type, object[]> Known = new();

    private static IEnumerable<object> FindWellKnown(Type type) =>
        type.Namespace?.StartsWith("LowVoltage.Calc", StringComparison.Ordinal) != true
            ? []
            : type.Assembly.GetExportedTypes()
                .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
                .Where(p => p.PropertyType == type)
                .Select(p => p.GetValue(null)!);

    private static object PickQuantity(Type type, Random random)
    {
        IQuantity zero = (IQuantity)Activator.CreateInstance(type)!;
        double number = random.Next(2) == 0
            ? Numbers[random.Next(Numbers.Length - 3)]
            : type == typeof(Temperature) ? (random.NextDouble() * 400) - 80 : Math.Pow(10, (random.NextDouble() * 8) - 4);
        if (Usual.TryGetValue(type, out double usual) && random.Next(3) == 0)
        {
            number = usual * (1 + random.NextDouble());
        }

        if (type == typeof(Power))
        {
            number = Math.Clamp(number, -1e20, 1e20);
        }

        return Quantity.From(number, zero.QuantityInfo.BaseUnitInfo.Value is var unit && type == typeof(Temperature) ? UnitsNet.Units.TemperatureUnit.DegreeCelsius : unit);
    }

    private static CircuitRequirements PickRequirements(Random random) => new()
    {
        Source = (Source)Pick(typeof(Source), random)!,
        Load = (Load)Pick(typeof(Load), random)!,
        Feed = Length.FromMeters(Math.Pow(10, (random.NextDouble() * 6) - 3)),
        Return = (ReturnPath)Pick(typeof(ReturnPath), random)!,
        Place = new Place { Ambient = Temperature.FromDegreesCelsius((random.NextDouble() * 200) - 60), LoadedConductors = random.Next(1, 60) },
        Insulation = (InsulationMaterial)Pick(typeof(InsulationMaterial), random)!,
        Upstream = random.Next(2) == 0 ? null : ElectricResistance.FromOhms(random.NextDouble() * 0.02),
    };
}
