using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Conductors;

/// <summary>The smallest size for a drop, the shortcuts to a conductor, a wire, a pair and its drop.</summary>
public class SmallestForTests
{
    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(20);

    private static ConductorSeries[] AllSeries =>
    [
        ConductorSeries.AwgStranded, ConductorSeries.AwgSolid, ConductorSeries.AwgTrade, ConductorSeries.AwgTinned, ConductorSeries.KcmilStranded, ConductorSeries.AwgAndKcmil,
        ConductorSeries.RoadVehicle, ConductorSeries.Iec60228Class5, ConductorSeries.Iec60228Class5Tinned, ConductorSeries.Iec60228Class2, ConductorSeries.VehicleGauge, ConductorSeries.AircraftWire,
    ];

    private static Length M(double meters) => Length.FromMeters(meters);

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static ElectricPotential V(double volts) => ElectricPotential.FromVolts(volts);

    // The drop by hand from the resistance at 20 °C and the metal's line, not by the code under test.
    [Fact]
    public void SmallestFor_RandomCases_IsWithinAndTheNextSmallerIsBeyond()
    {
        Random random = new(20_261_129);
        int chosen = 0, beyondAll = 0;
        foreach (ConductorSeries series in AllSeries)
        {
            for (int i = 0; i < 400; i++)
            {
                double meters = Math.Pow(10, random.NextDouble() * 3 - 1), amperes = Math.Pow(10, random.NextDouble() * 4 - 1), volts = 0.05 + (3 * random.NextDouble());
                double celsius = (random.NextDouble() * 150) - 40;
                double Drop(Conductor wire) => amperes * meters * wire.ResistancePerLength(Warm).OhmsPerMeter * (1 + (wire.Material.TemperatureCoefficient * (celsius - 20)));
                int first = series.Conductors.ToList().FindIndex(wire => Drop(wire) <= volts);
                bool found = series.TrySmallestFor(M(meters), A(amperes), Temperature.FromDegreesCelsius(celsius), V(volts), out Conductor? wire);
                Assert.Equal(first >= 0, found);
                if (wire is null)
                {
                    beyondAll++;
                    Assert.True(Drop(series.Conductors[^1]) > volts);
                    continue;
                }

                chosen++;
                Assert.Same(series.Conductors[first], wire);
                Assert.True(Drop(wire) <= volts * (1 + 1e-9));
                Assert.All(series.Conductors.Take(first), smaller => Assert.True(Drop(smaller) > volts));
                Assert.Equal(Drop(wire), VoltageDrop.Along(wire, M(meters), A(amperes), Temperature.FromDegreesCelsius(celsius)).Volts, 1e-9 * volts);
            }
        }

        Assert.True(chosen > 2000 && beyondAll > 200, $"{chosen} {beyondAll}");
    }

    // 10 A over 8 m of conductor within 0.36 V: ρ/S asks for 3.83 mm², but road-vehicle 4 mm² may have 4.71 mΩ/m and then drops 0.377 V.
    [Fact]
    public void SmallestFor_WhereTheSectionWouldMislead_TakesTheSizeThatHoldsTheLimit()
    {
        Area section = VoltageDrop.LeastArea(ConductorMaterial.Copper.Resistivity, M(8), A(10), V(0.36));
        Assert.Equal(3.83, section.SquareMillimeters, 0.005);
        Conductor bySection = ConductorSeries.RoadVehicle.SmallestAtLeast(section), byDrop = ConductorSeries.RoadVehicle.SmallestFor(M(8), A(10), Warm, V(0.36));
        Assert.Equal(4, bySection.Area.SquareMillimeters);
        Assert.Equal(0.377, VoltageDrop.Along(bySection, M(8), A(10), Warm).Volts, 5e-4);
        Assert.Equal(5, byDrop.Area.SquareMillimeters);
        Assert.Equal(0.315, VoltageDrop.Along(byDrop, M(8), A(10), Warm).Volts, 5e-4); // 3.94 mΩ/m
    }

    [Fact]
    public void SmallestFor_NothingIsEnough_SaysWhatTheLargestDrops()
    {
        // 120 mm²: 0.153 mΩ/m · 100 m · 1000 A = 15.3 V.
        string said = Assert.Throws<ArgumentOutOfRangeException>("allowed", () => ConductorSeries.RoadVehicle.SmallestFor(M(100), A(1000), Warm, V(1))).Message;
        Assert.Contains("at least 15.3 V", said, StringComparison.Ordinal);
        Assert.Contains("120 mm²", said, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("length", () => ConductorSeries.RoadVehicle.SmallestFor(M(0), A(1), Warm, V(1)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => ConductorSeries.RoadVehicle.SmallestFor(M(1), A(-1), Warm, V(1)));
        Assert.Throws<ArgumentOutOfRangeException>("allowed", () => ConductorSeries.RoadVehicle.SmallestFor(M(1), A(1), Warm, V(0)));
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => ConductorSeries.RoadVehicle.SmallestFor(M(1), A(1), Temperature.FromDegreesCelsius(2000), V(1)));
    }

    [Fact]
    public void EverySeries_RisesInMetalAndFallsInResistance()
    {
        foreach (ConductorSeries series in AllSeries)
        {
            // What a caller may not do, no carried series does.
            Assert.Equal(series.Conductors, ConductorSeries.Create("again", series.Conductors, series.Reference).Conductors);
            Assert.Equal(series.Conductors.Count, series.Conductors.Select(wire => wire.Size).Distinct().Count());
        }
    }

    [Fact]
    public void AwgTrade_HasEvenNumbersAndEveryOneFromOneUp()
    {
        int[] numbers = [.. ConductorSeries.AwgTrade.Conductors.Select(wire => { Assert.True(wire.Size!.Value.TryGetAwg(out AwgSize size)); return size.Number; })];
        Assert.All(numbers, number => Assert.True(number <= 1 || number % 2 == 0));
        Assert.Equal([30, -3], new[] { numbers[0], numbers[^1] });
        Assert.Contains(ConductorSeries.AwgStranded.Conductors, wire => wire.Size == AwgSize.FromNumber(11));
        Assert.Equal(numbers.Length + KcmilSize.All.Count, ConductorSeries.AwgAndKcmil.Conductors.Count);
        Assert.Equal("1000 kcmil", ConductorSeries.AwgAndKcmil.Conductors[^1].Size.ToString());
    }

    // ASTM B33: 0.16454 Ω·g/m² for the finest class over 8.89 g/cm³, against 1/58 Ω·mm²/m: 7.35 % more.
    [Fact]
    public void AwgTinned_HasTheResistanceOfItsStrands()
    {
        foreach ((Conductor tinned, Conductor bare) in ConductorSeries.AwgTinned.Conductors.Zip(ConductorSeries.AwgTrade.Conductors))
        {
            Assert.Equal(bare.Size, tinned.Size);
            Assert.Equal(0.16454 / 8.89 * 58, tinned.ResistancePerLength(Warm).OhmsPerMeter / bare.ResistancePerLength(Warm).OhmsPerMeter, 1e-9);
        }
    }

    [Fact]
    public void Shortcuts_AreTheLongForms()
    {
        Conductor wire = Conductor.Awg(14);
        Assert.Equal(Conductor.Stranded(AwgSize.FromNumber(14), ConductorMaterial.Copper), wire);
        Assert.Equal("4/0 AWG stranded copper", Conductor.Awg(-3).Name);
        Assert.Throws<ArgumentOutOfRangeException>("number", () => Conductor.Awg(41));

        Wire insulated = Wire.Create(wire, InsulationMaterial.CrossLinkedPolyethylene);
        Assert.Equal(Wire.Create(wire, InsulationMaterial.CrossLinkedPolyethylene, InsulationWall.UsualFor(wire)).Wall.Millimeters, insulated.Wall.Millimeters, 1e-12);
        Assert.Throws<ArgumentNullException>("insulation", () => Wire.Create(wire, null!));
        Assert.Throws<ArgumentNullException>("conductor", () => Wire.Create(null!, InsulationMaterial.Etfe));

        CircuitPath pair = CircuitPath.TwoWire(wire, M(5));
        Assert.Equal(2 * wire.Resistance(M(5), Warm).Ohms, pair.ResistanceAt(Warm).Ohms, 1e-15);
        Assert.Equal([5.0, 5.0], pair.Feed.Concat(pair.ReturnSegments).Select(segment => segment.Length.Meters));
        Assert.Throws<ArgumentOutOfRangeException>("oneWay", () => CircuitPath.TwoWire(wire, M(0)));
        Assert.Throws<ArgumentNullException>("conductor", () => CircuitPath.TwoWire(null!, M(1)));
        Assert.Throws<ArgumentNullException>("conductor", () => VoltageDrop.Along(null!, M(1), A(1), Warm));
    }
}
