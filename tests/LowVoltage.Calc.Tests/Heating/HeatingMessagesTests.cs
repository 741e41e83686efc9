using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>What a refusal says, word for word: the parameter, the accepted range, the value and its unit.</summary>
public class HeatingMessagesTests
{
    private static readonly Area Square = Area.FromSquareMillimeters(1);

    [Fact]
    public void Adiabatic()
    {
        ConductorMaterial copper = ConductorMaterial.Copper;
        Says("limit", "must be above the initial 70 °C and at most 1083 °C, where copper melts; it was 60 °C.", () => AdiabaticHeating.KFactor(copper, C(70), C(60)));
        Says("limit", "must be above the initial 0 °C by at least 1E-12 °C and at most 1083 °C, where copper melts; it was 1E-13 °C.", () => AdiabaticHeating.AreaFor(copper, A(1), S(1), C(0), C(1e-13)));
        Assert.True(double.IsFinite(AdiabaticHeating.AreaFor(copper, A(1e7), S(5), C(0), C(1e-12)).SquareMillimeters));
        Says("initial", "must be from -100 °C to 1083 °C; it was -101 °C.", () => AdiabaticHeating.KFactor(copper, C(-101), C(60)));
        Says("duration", "must be greater than zero and at most 5 s; it was 6 s.", () => AdiabaticHeating.AreaFor(copper, A(10), S(6), C(70), C(160)));
        ConductorMeltsException melts = Assert.Throws<ConductorMeltsException>(() => AdiabaticHeating.FinalTemperature(copper, Square, A(1000), S(1), C(20)));

        // IEC 60949: t = K²·S²·ln((1083 + 234.5)/(20 + 234.5))/I² with K² = 3.45e6 · 254.5 · 58e6 · 1e-12.
        double seconds = 3.45e6 * 254.5 * 58e-6 * Math.Log(1317.5 / 254.5) / 1e6;
        Assert.Equal(
            $"1000 A melts 1 mm² of copper (1083 °C) after {seconds.ToString("G6", CultureInfo.InvariantCulture)} s; there is no final temperature.", melts.Message);
    }

    [Fact]
    public void ShortCircuitRules()
    {
        Says("duration", "must be greater than zero and at most 5 s; it was 6 s.", () => IceaShortCircuit.CopperCurrent(Square, S(6), C(75), C(150)));
        Says("initial", "must be from -100 °C to 1083 °C; it was 1100 °C.", () => IceaShortCircuit.CopperCurrent(Square, S(1), C(1100), C(150)));
        Says("limit", "must be above the initial 0 °C by at least 1E-12 °C and at most 1083 °C; it was 1E-13 °C.", () => IceaShortCircuit.CopperCurrent(Square, S(1), C(0), C(1e-13)));
        Says("limit", "must be above the initial 75 °C and at most 1083 °C; it was 1084 °C.", () => IceaShortCircuit.CopperCurrent(Square, S(1), C(75), C(1084)));
        Says("limit", "must be above the initial 75 °C and at most 657 °C; it was 75 °C.", () => IceaShortCircuit.AluminiumCurrent(Square, S(1), C(75), C(75)));
        Says(
            "duration", "must be greater than zero and at most 5 s; it was 6 s.",
            () => NonAdiabaticFactor.Simplified(new NonAdiabaticCoefficients(0.4, 0.06), Square, S(6)));
    }

    [Fact]
    public void Fusing()
    {
        Says("duration", "must be greater than zero and at most 10 s; it was 11 s.", () => FusingEstimates.OnderdonkCurrent(Square, S(11), C(20)));
        Says("ambient", "must be from -100 °C to 1000 °C; it was 1001 °C.", () => FusingEstimates.OnderdonkCurrent(Square, S(1), C(1001)));
        Says("current", "must melt the wire within 10 s, the end of Onderdonk's range; 1 A does not.", () => FusingEstimates.OnderdonkTime(Square, A(1), C(20)));
        Says(
            "diameter", "must be from 0.05 mm to 12 mm; it was 13 mm.",
            () => FusingEstimates.PreeceCurrent(PreeceMetal.Copper, Length.FromMillimeters(13)));
    }

    [Fact]
    public void AirAndConvection()
    {
        Says("temperature", "must be from 200 K to 1200 K; it was 199 K.", () => AirProperties.At(Temperature.FromKelvins(199), Pressure.FromPascals(1e5)));
        Says("pressure", "must be from 1000 Pa to 200000 Pa; it was 999 Pa.", () => AirProperties.At(C(20), Pressure.FromPascals(999)));
        Says("rayleigh", "must be zero or greater and at most 1E+12; it was -1.", () => NaturalConvection.ChurchillChu(-1, 0.7));
        Says("prandtl", "must be from 0.01 to 1000; it was 0.", () => NaturalConvection.ChurchillChu(1, 0));
        Says("rayleigh", "must be from 1E-10 to 1E+12; it was 0.", () => NaturalConvection.Morgan(0));
        AirProperties air = AirProperties.At(C(20), Pressure.FromPascals(1e5));
        Says(
            "difference", "must be from -2000 K to 2000 K; it was 2001 K.",
            () => NaturalConvection.RayleighNumber(air, TemperatureDelta.FromKelvins(2001), Length.FromMillimeters(1)));
        HeatTransferCoefficient none = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(0);
        Says(
            "coefficient", "must be greater than zero and at most 1E+06 W/(m²·K); it was 0 W/(m²·K).",
            () => CriticalRadius.Of(InsulationMaterial.PolyvinylChloride, none));
        Says(
            "conductivity", "must be greater than zero and at most 1E+06 W/(m·K); it was 0 W/(m·K).",
            () => CriticalRadius.Of(ThermalConductivity.FromWattsPerMeterKelvin(0), none));
        Says("SurfaceCoefficient", "must be greater than zero and at most 1E+06 W/(m²·K); it was 0 W/(m²·K).", () => new Surroundings { Ambient = C(20), SurfaceCoefficient = none });
        Says("Emissivity", "must be from 0 to 1; it was 2.", () => new Surroundings { Ambient = C(20), Emissivity = 2 });
    }

    [Fact]
    public void Wires()
    {
        Says("fill", "must be from 0.5 to 0.9069; it was 1.", () => WireBundle.Create(Solid(1, 0.5), 3, 2, 1));

        // The largest current settles at the melting point: √(K·(1083 − 25)/R′(1083)) of a loss that is straight, 81.33186… A.
        LinearWire wire = new();
        string most = wire.Holding(1083).ToString("G6", CultureInfo.InvariantCulture);
        Says(
            "current", $"must be at most {most} A, the largest that settles below 1083 °C here; it was 1000 A.",
            () => HeatBalance.TemperatureAt(wire.Wire, wire.Air, A(1000)));
    }

    private static void Says(string name, string sentence, Func<object> call)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(name, call);
        Assert.StartsWith($"{name} {sentence}", refused.Message, StringComparison.Ordinal);
    }
}
