using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using Console = LowVoltage.Calc.Tests.Docs.Snippets.Console;

namespace LowVoltage.Calc.Tests.Docs.Questions;

/// <summary>How hot a wire gets, and how soon.</summary>
internal static class HeatQuestions
{
    public static void HowHot()
    {
        #region how-hot
        Wire wire = Wire.Create(Conductor.Iso6722(MetricSize.Parse("1.5")), InsulationMaterial.PolyvinylChloride);
        Temperature hot = HeatBalance.TemperatureAt(
            wire, Surroundings.Create(Temperature.FromDegreesCelsius(30)), ElectricCurrent.FromAmperes(20));
        Console.WriteLine($"{hot.DegreesCelsius:0} °C, and the insulation stands {wire.Insulation.ContinuousLimit.DegreesCelsius:0} °C");
        #endregion
    }

    public static void WiresTogether()
    {
        #region wires-together
        Wire wire = Wire.Create(Conductor.Awg(16), InsulationMaterial.CrossLinkedPolyethylene);
        foreach (int count in new[] { 1, 2, 4, 10 })
        {
            ElectricCurrent each = BundleHeat.CurrentFor(WireBundle.Create(wire, count, count),
                Surroundings.Create(Temperature.FromDegreesCelsius(60)), Temperature.FromDegreesCelsius(90));
            Console.WriteLine($"{count} together: {each.Amperes:0.0} A each");
        }
        #endregion
    }

    public static void InASleeve()
    {
        #region in-a-sleeve
        Wire wire = Wire.Create(Conductor.Awg(12), InsulationMaterial.HeatResistantPolyvinylChloride);
        WireBundle pair = WireBundle.Pair(wire);
        Surroundings air = Surroundings.Create(Temperature.FromDegreesCelsius(40));
        Console.WriteLine($"in the open: {BundleHeat.TemperatureAt(pair, air, ElectricCurrent.FromAmperes(25)).DegreesCelsius:0} °C");
        Console.WriteLine($"in a sleeve: {BundleHeat.TemperatureAt(pair.InSleeve(), air, ElectricCurrent.FromAmperes(25)).DegreesCelsius:0} °C");
        #endregion
    }

    public static void TimeToOverheat()
    {
        #region time-to-overheat
        Wire wire = Wire.Create(Conductor.Iso6722(MetricSize.Parse("1")), InsulationMaterial.PolyvinylChloride);
        Surroundings air = Surroundings.Create(Temperature.FromDegreesCelsius(30));
        foreach (double amperes in new[] { 15.0, 25, 40, 80 })
        {
            Duration? time = OverloadHeating.TimeToReach(wire, air, ElectricCurrent.FromAmperes(amperes), wire.Insulation.ShortCircuitLimit);
            Console.WriteLine(time is { } there ? $"{amperes} A: 160 °C after {there.Seconds:0.0} s" : $"{amperes} A: never 160 °C");
        }
        #endregion
    }

    public static void OnForASecond()
    {
        #region on-for-a-second
        Wire wire = Wire.Create(Conductor.Iso6722(MetricSize.Parse("1.5")), InsulationMaterial.PolyvinylChloride);
        Surroundings air = Surroundings.Create(Temperature.FromDegreesCelsius(30));
        TemperatureBand band = OverloadHeating.CyclicBand(
            wire, air, ElectricCurrent.FromAmperes(40), Duration.FromSeconds(1), Duration.FromSeconds(9))!;
        Console.WriteLine($"between {band.Lowest.DegreesCelsius:0} °C and {band.Highest.DegreesCelsius:0} °C");
        #endregion
    }

    public static void WireForAShortCircuit()
    {
        #region wire-for-a-short-circuit
        Area least = AdiabaticHeating.AreaFor(
            ConductorMaterial.Copper, ElectricCurrent.FromAmperes(1500), Duration.FromSeconds(0.2),
            Temperature.FromDegreesCelsius(70), InsulationMaterial.PolyvinylChloride.ShortCircuitLimit);
        Console.WriteLine($"{least.SquareMillimeters:0.0} mm²");
        #endregion
    }

    public static void WireAsAFuse()
    {
        #region wire-as-a-fuse
        Length strand = Length.FromMillimeters(0.2);
        Console.WriteLine($"{FusingEstimates.PreeceCurrent(PreeceMetal.Copper, strand).Amperes:0.0} A melts it, some time");
        #endregion
    }
}
