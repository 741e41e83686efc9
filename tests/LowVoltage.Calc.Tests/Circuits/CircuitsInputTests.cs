using System.Reflection;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Circuits;

/// <summary>Every public static entry of the room, every numeric argument in turn: absurd values are refused by name and unit; good ones give finite results.</summary>
public class CircuitsInputTests
{
    private static readonly Dictionary<Type, object> Good = new()
    {
        [typeof(ElectricCurrent)] = ElectricCurrent.FromAmperes(2),
        [typeof(ElectricPotential)] = ElectricPotential.FromVolts(12),
        [typeof(ElectricResistance)] = ElectricResistance.FromOhms(0.5),
        [typeof(Power)] = Power.FromWatts(10),
        [typeof(Length)] = Length.FromMeters(3),
        [typeof(Duration)] = Duration.FromSeconds(2),
        [typeof(Temperature)] = Temperature.FromDegreesCelsius(20),
        [typeof(ElectricCharge)] = ElectricCharge.FromAmpereHours(50),
        [typeof(ElectricResistivity)] = ElectricResistivity.FromOhmMeters(1.7e-8),
        [typeof(Area)] = Area.FromSquareMillimeters(2.5),
        [typeof(LinearResistance)] = LinearResistance.FromOhmsPerKilometer(8),
        [typeof(double)] = 1.0,
        [typeof(Wire)] = Wire.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(1.5)), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6)),
        [typeof(Place)] = Place.Create(Temperature.FromDegreesCelsius(20)),
        [typeof(int)] = 1,
        [typeof(string)] = "fuse",
        [typeof(ColdCrankingStandard)] = ColdCrankingStandard.SaeJ537,
        [typeof(SupplyLevel)] = SupplyLevel.Nominal,
        [typeof(LoadState)] = LoadState.Running,
        [typeof(ElectricResistance[])] = new[] { ElectricResistance.FromOhms(0.1), ElectricResistance.FromOhms(0.2) },
        [typeof(Conductor)] = Paths.Awg(14),
        [typeof(Segment)] = Segment.Create(Paths.Awg(14), Length.FromMeters(3)),
        [typeof(Segment[])] = new[] { Segment.Create(Paths.Awg(14), Length.FromMeters(3)) },
        [typeof(IReadOnlyList<ElectricPotential>)] = new[] { ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(10), ElectricPotential.FromVolts(12) },
        [typeof(IReadOnlyList<ElectricCurrent>)] = new[] { ElectricCurrent.FromAmperes(1), ElectricCurrent.FromAmperes(2), ElectricCurrent.FromAmperes(3) },
        [typeof(IReadOnlyList<Segment>)] = new[] { Segment.Create(Paths.Awg(14), Length.FromMeters(3)) },
        [typeof(Tap[])] = new[] { Tap.Create(Length.FromMeters(1), ElectricCurrent.FromAmperes(2)) },
        [typeof(Load[])] = new[] { Load.ConstantCurrent(ElectricCurrent.FromAmperes(2)) },
        [typeof(Source[])] = new[] { Paths.Battery(12, 0.01) },
        [typeof(Source)] = Paths.Battery(12, 0.01),
        [typeof(Load)] = Load.ConstantCurrent(ElectricCurrent.FromAmperes(2)),
        [typeof(CircuitPath)] = Paths.Wires(14, 2, 3),
        [typeof(ReturnPath)] = ReturnPath.Wire(Length.FromMeters(3)),
        [typeof(ConductorTemperature)] = Paths.SelfHeated(20, 20, 90),
    };

    // Values that some entry needs in another order than the common good ones.
    private static readonly Dictionary<string, object> Special = new()
    {
        ["ConductorTemperature.SelfHeated.ratedTemperature"] = Temperature.FromDegreesCelsius(90),
        ["ResistorNetwork.Shunt.range"] = ElectricCurrent.FromAmperes(10),
        ["ResistorNetwork.ExplainShunt.range"] = ElectricCurrent.FromAmperes(10),
        ["InternalResistance.ExplainFromTwoPoints.secondCurrent"] = ElectricCurrent.FromAmperes(10),
        ["InternalResistance.FromTwoPoints.secondCurrent"] = ElectricCurrent.FromAmperes(10),
        ["LeadAcidCharge.StateOfChargeAt.voltage"] = ElectricPotential.FromVolts(12.3),
    };

    private static readonly Dictionary<Type, object[]> Bad = new()
    {
        [typeof(ElectricCurrent)] = [ElectricCurrent.FromAmperes(-1), ElectricCurrent.FromAmperes(double.MaxValue)],
        [typeof(ElectricPotential)] = [ElectricPotential.FromVolts(-1), ElectricPotential.FromVolts(double.MaxValue)],
        [typeof(ElectricResistance)] = [ElectricResistance.FromOhms(-1), ElectricResistance.FromOhms(double.MaxValue)],
        [typeof(Power)] = [Power.FromWatts(-1), Power.FromWatts(1e13), Power.Zero],
        [typeof(Length)] = [Length.FromMeters(-1), Length.FromMeters(double.MaxValue)],
        [typeof(Duration)] = [Duration.FromSeconds(-1), Duration.FromSeconds(double.MaxValue)],
        [typeof(Temperature)] = [Temperature.FromDegreesCelsius(-274), Temperature.FromDegreesCelsius(1e300)],
        [typeof(ElectricCharge)] = [ElectricCharge.FromCoulombs(-1), ElectricCharge.FromCoulombs(1e300), ElectricCharge.Zero],
        [typeof(ElectricResistivity)] = [ElectricResistivity.FromOhmMeters(-1), ElectricResistivity.FromOhmMeters(1e300), ElectricResistivity.Zero],
        [typeof(Area)] = [Area.FromSquareMillimeters(-1), Area.FromSquareMillimeters(1e300), Area.Zero],
        [typeof(double)] = [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1.0, 1e300],
        [typeof(int)] = [0, -1, int.MaxValue, int.MinValue],
        [typeof(ColdCrankingStandard)] = [(ColdCrankingStandard)(-1), (ColdCrankingStandard)99],
        [typeof(SupplyLevel)] = [(SupplyLevel)(-1), (SupplyLevel)99],
        [typeof(LoadState)] = [(LoadState)(-1), (LoadState)99],
    };

    // Zero is refused wherever the documentation says "positive"; these entries take zero or are checked for it elsewhere.
    private static readonly Dictionary<Type, object> Zero = new()
    {
        [typeof(ElectricPotential)] = ElectricPotential.Zero,
        [typeof(ElectricResistance)] = ElectricResistance.Zero,
        [typeof(ElectricCurrent)] = ElectricCurrent.Zero,
        [typeof(Length)] = Length.Zero,
        [typeof(Duration)] = Duration.Zero,
        [typeof(double)] = 0.0,
    };

    public static TheoryData<string> Entries => [.. Methods().Keys];

    [Theory, MemberData(nameof(Entries))]
    public void Entry_EachAbsurdArgument_IsRefusedByName(string entry)
    {
        MethodInfo method = Methods()[entry];
        ParameterInfo[] parameters = method.GetParameters();
        for (int k = 0; k < parameters.Length; k++)
        {
            Type type = Nullable.GetUnderlyingType(parameters[k].ParameterType) ?? parameters[k].ParameterType;
            foreach (object bad in Bad.GetValueOrDefault(type, []))
            {
                object?[] arguments = Arguments(method);
                arguments[k] = bad;
                if (method.Name.StartsWith("Try", StringComparison.Ordinal))
                {
                    Assert.Equal(false, method.Invoke(null, arguments));
                    continue;
                }

                ArgumentOutOfRangeException refusal = Assert.IsType<ArgumentOutOfRangeException>(
                    Assert.Throws<TargetInvocationException>(() => method.Invoke(null, arguments)).InnerException);
                Assert.Equal(parameters[k].Name, refusal.ParamName);
                Assert.Contains(parameters[k].Name!, refusal.Message, StringComparison.Ordinal);
            }
        }
    }

    [Theory, MemberData(nameof(Entries))]
    public void Entry_EachZeroArgument_IsRefusedByNameOrGivesFiniteResults(string entry)
    {
        MethodInfo method = Methods()[entry];
        ParameterInfo[] parameters = method.GetParameters();
        Finite(method.Invoke(null, Arguments(method)), entry, 0);
        for (int k = 0; k < parameters.Length; k++)
        {
            Type type = Nullable.GetUnderlyingType(parameters[k].ParameterType) ?? parameters[k].ParameterType;
            if (!Zero.TryGetValue(type, out object? zero))
            {
                continue;
            }

            object?[] arguments = Arguments(method);
            arguments[k] = zero;
            try
            {
                Finite(method.Invoke(null, arguments), entry, 0);
            }
            catch (TargetInvocationException e)
            {
                Assert.Equal(parameters[k].Name, Assert.IsType<ArgumentOutOfRangeException>(e.InnerException).ParamName);
            }
        }
    }

    [Theory, MemberData(nameof(Entries))]
    public void Entry_EachNullArgument_IsRefusedByName(string entry)
    {
        MethodInfo method = Methods()[entry];
        ParameterInfo[] parameters = method.GetParameters();
        for (int k = 0; k < parameters.Length; k++)
        {
            if (parameters[k].ParameterType.IsValueType || parameters[k].IsOut)
            {
                continue;
            }

            object?[] arguments = Arguments(method);
            arguments[k] = null;
            Exception inner = Assert.Throws<TargetInvocationException>(() => method.Invoke(null, arguments)).InnerException!;
            Assert.Equal(parameters[k].Name, Assert.IsType<ArgumentNullException>(inner).ParamName);
        }
    }

    private static Dictionary<string, MethodInfo> Methods()
    {
        Dictionary<string, MethodInfo> methods = new(StringComparer.Ordinal);
        foreach (Type type in typeof(OhmsLaw).Assembly.GetExportedTypes().Where(t => t.Namespace == typeof(OhmsLaw).Namespace && !t.IsEnum))
        {
            foreach (MethodInfo method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            {
                if (!method.IsSpecialName)
                {
                    methods.Add($"{type.Name}.{method.Name}({string.Join(',', method.GetParameters().Select(p => p.ParameterType.Name))})", method);
                }
            }
        }

        return methods;
    }

    private static object?[] Arguments(MethodInfo method) => [.. method.GetParameters().Select(p =>
    {
        Type type = Nullable.GetUnderlyingType(p.ParameterType) ?? p.ParameterType;
        return p.IsOut ? null : Special.GetValueOrDefault($"{method.DeclaringType!.Name}.{method.Name}.{p.Name}") ?? Good[type];
    })];

    // Reads every public property of a result, and of what it holds, and looks for a number that is none.
    private static void Finite(object? value, string path, int depth)
    {
        switch (value)
        {
            case null or string or Enum or bool:
                return;
            case double number:
                Assert.True(double.IsFinite(number), path);
                return;
            case IQuantity quantity:
                Assert.True(double.IsFinite((double)quantity.Value), path);
                return;
            case System.Collections.IEnumerable items:
                foreach (object? item in items)
                {
                    Finite(item, path + "[]", depth + 1);
                }

                return;
        }

        if (depth > 3 || value.GetType().Namespace is not ("LowVoltage.Calc.Circuits" or "LowVoltage.Calc.Quantities"))
        {
            return;
        }

        bool exists = value is not OperatingPoint { Exists: false };
        foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(_ => exists))
        {
            Finite(property.GetValue(value), $"{path}.{property.Name}", depth + 1);
        }
    }
}
