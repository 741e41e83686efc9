using System.Reflection;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>
/// What callers describe can be described without <c>init</c> and <c>required</c>, which Visual Basic and the C# of .NET Framework do not have: by <c>Create</c> with what is required
/// and <c>With…</c> for the rest.
/// </summary>
public class EveryLanguageTests
{
    // The requirements and rules of a design are left out: they are copied by their own constructors.
    private static Type[] Described => [.. typeof(Conductor).Assembly.GetExportedTypes()
        .Where(type => SurfaceTests.IsOurs(type) && type.Namespace is not ("LowVoltage.Calc" or "LowVoltage.Calc.Design" or "LowVoltage.Calc.Checks" or "LowVoltage.Calc.Harnesses"))
        .Where(type => type.IsClass && !typeof(Exception).IsAssignableFrom(type) && type.GetConstructor(Type.EmptyTypes) is not null && Settable(type).Length > 0)];

    public static TheoryData<string> Names => [.. Described.Select(type => type.Name)];

    [Fact]
    public void TypesThatCallersFill_AreFive() =>
        Assert.Equal(["FusePractice", "FuseSeriesDefinition", "Place", "Reference", "Surroundings"], Described.Select(type => type.Name).Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(Names))]
    public void EverySettableProperty_IsAParameterOfCreateOrWith(string name)
    {
        Type type = Array.Find(Described, t => t.Name == name)!;
        MethodInfo[] makers = [.. type.GetMethods().Where(m => m.ReturnType == type && (m.Name == "Create" || m.Name.StartsWith("With", StringComparison.Ordinal)))];
        Assert.All(Settable(type), property => Assert.Contains(
            makers, m => (m.Name == "Create") == IsRequired(property) && m.GetParameters().Any(p => Sets(m, p, property))));
    }

    [Theory, MemberData(nameof(Names))]
    public void With_ChangesItsOwnAndKeepsEverythingElse(string name)
    {
        Type type = Array.Find(Described, t => t.Name == name)!;
        object full = Full(type);
        foreach (MethodInfo with in type.GetMethods().Where(m => m.ReturnType == type && m.Name.StartsWith("With", StringComparison.Ordinal)))
        {
            object changed = with.Invoke(full, [.. with.GetParameters().Select(p => Value(type, Settable(type).Single(own => Sets(with, p, own)).Name, second: true))])!;
            foreach (PropertyInfo property in Settable(type))
            {
                bool mine = with.GetParameters().Any(p => Sets(with, p, property));
                object? expected = mine ? Value(type, property.Name, second: true) : property.GetValue(full);
                Assert.Equal(expected, property.GetValue(changed));
                Assert.Equal(!mine, Equals(property.GetValue(full), property.GetValue(changed)));
            }
        }
    }

    [Fact]
    public void Create_WhatIsMissingOrOutOfRange_IsRefusedByName()
    {
        Assert.Throws<ArgumentNullException>("title", () => Reference.Create(null!, ReferenceKind.Law));
        Assert.Throws<ArgumentException>("title", () => Reference.Create(" ", ReferenceKind.Law));
        Assert.Throws<ArgumentOutOfRangeException>("kind", () => Reference.Create("t", (ReferenceKind)99));
        Assert.Throws<ArgumentNullException>("note", () => Reference.Create("t", ReferenceKind.Law).WithNote(null!));
        Assert.Throws<ArgumentNullException>("Title", () => new Reference { Title = null!, Kind = ReferenceKind.Law });
        Assert.Throws<ArgumentOutOfRangeException>("ambient", () => Surroundings.Create(Temperature.FromDegreesCelsius(400)));
        Assert.Throws<ArgumentOutOfRangeException>("altitude", () => Surroundings.Create(Temperature.FromDegreesCelsius(40)).WithAltitude(Length.FromKilometers(30)));
        Assert.Throws<ArgumentOutOfRangeException>("emissivity", () => Surroundings.Create(Temperature.FromDegreesCelsius(40)).WithEmissivity(2));
        Assert.Throws<ArgumentNullException>("ratings", () => FuseSeriesDefinition.Create("n", "k", null!, Reference.CommonPractice("p")));
        Assert.Throws<ArgumentOutOfRangeException>("drop", () => VoltageDropAllowance.Create("c", ElectricPotential.Zero, Reference.CommonPractice("p")));
        Assert.Throws<ArgumentOutOfRangeException>("share", () => VoltageDropAllowance.Create("c", Ratio.FromPercent(101), Reference.CommonPractice("p")));
    }

    // 3 % of 12 V; and 0.2 V whatever the voltage.
    [Fact]
    public void VoltageDropAllowance_OfTheCaller_IsAnAllowance()
    {
        Assert.Equal(0.36, VoltageDropAllowance.Create("lights", Ratio.FromPercent(3), Reference.CommonPractice("p")).Limit(ElectricPotential.FromVolts(12)).Volts, 1e-12);
        Assert.Equal(0.2, VoltageDropAllowance.Create("charging", ElectricPotential.FromVolts(0.2), Reference.CommonPractice("p")).Drop!.Value.Volts);
    }

    private static PropertyInfo[] Settable(Type type) => [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.SetMethod is { IsPublic: true })];

    // A parameter is named after its property, or the one parameter of With… is what the method is named after.
    private static bool Sets(MethodInfo method, ParameterInfo parameter, PropertyInfo property) =>
        string.Equals(parameter.Name, property.Name, StringComparison.OrdinalIgnoreCase) || (method.GetParameters().Length == 1 && method.Name == "With" + property.Name);

    private static bool IsRequired(PropertyInfo property) => property.GetCustomAttributes().Any(a => a.GetType().Name == "RequiredMemberAttribute");

    private static object Full(Type type)
    {
        object full = Activator.CreateInstance(type)!;
        foreach (PropertyInfo property in Settable(type))
        {
            property.SetValue(full, Value(type, property.Name, second: false));
        }

        return full;
    }

    private static object Value(Type type, string name, bool second)
    {
        PropertyInfo property = Settable(type).Single(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase));
        Type asked = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        return asked switch
        {
            _ when asked == typeof(string) => second ? "second" : "first",
            _ when asked == typeof(double) => second ? 0.4 : 0.3,
            _ when asked == typeof(int) => second ? 4 : 3,
            _ when asked == typeof(bool) => !second,
            _ when asked == typeof(Temperature) => Temperature.FromDegreesCelsius(second ? 40 : 30),
            _ when asked == typeof(Length) => Length.FromMeters(second ? 4000 : 3000),
            _ when asked == typeof(Speed) => Speed.FromMetersPerSecond(second ? 4 : 3),
            _ when asked == typeof(Duration) => Duration.FromSeconds(second ? 4 : 3),
            _ when asked == typeof(OverloadAllowance) => second ? OverloadAllowance.Ageing240Hours : OverloadAllowance.None,
            _ when asked == typeof(SourceDistance) => second ? SourceDistance.Cfr33 : SecondDistance,
            _ when asked == typeof(HeatTransferCoefficient) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(second ? 40 : 30),
            _ when asked == typeof(ElectricPotential) => ElectricPotential.FromVolts(second ? 32 : 58),
            _ when asked == typeof(ElectricCurrent) => ElectricCurrent.FromAmperes(second ? 1000 : 2000),
            _ when asked == typeof(Reference) => Reference.CommonPractice(second ? "second" : "first"),
            _ when asked == typeof(OperatingTimeLimits) => second ? OperatingTimeLimits.RoadVehicleBlade : OperatingTimeLimits.RoadVehicleHighCurrentBlade,
            _ when asked == typeof(AmbientRerating) => second ? AmbientRerating.IndustrialGg : AmbientRerating.UlSmallFuse,
            _ when asked == typeof(IReadOnlyList<ElectricCurrent>) => new[] { ElectricCurrent.FromAmperes(second ? 5 : 10) },
            _ when asked == typeof(IReadOnlyList<TimeCurrentCurve?>) => second ? SecondCurves : FirstCurves,
            _ when asked.IsEnum => Enum.GetValues(asked).GetValue(second ? 2 : 1)!,
            _ => throw new NotSupportedException($"{type.Name}.{name} is of a type that this test has no value for: {asked}."),
        };
    }

    private static readonly SourceDistance SecondDistance = SourceDistance.Create("own", Length.FromMeters(1), Length.FromMeters(2), Reference.CommonPractice("own"));

    private static readonly TimeCurrentCurve?[] FirstCurves = [null];

    private static readonly TimeCurrentCurve?[] SecondCurves = [OperatingTimeLimits.RoadVehicleBlade.CurveFor(ElectricCurrent.FromAmperes(10))];
}
