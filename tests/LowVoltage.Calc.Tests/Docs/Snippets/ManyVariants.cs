using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class ManyVariants
{
    public static void CountTheFailures()
    {
        #region count-the-failures
        Dictionary<CheckKind, int> failed = [];
        (double Margin, int Variant, string Name) worst = (0, -1, "");

        _ = Parallel.For(0, 960, number =>
        {
            CircuitDesign verified = Variant(number);
            lock (failed)
            {
                foreach (CheckResult check in verified.Checks.Where(c => c.Outcome == CheckOutcome.Fail))
                {
                    // A count and a least value with ties to the lower number: the same in whatever order the variants come.
                    failed[check.Kind!] = failed.GetValueOrDefault(check.Kind!) + 1;
                    double margin = check.Margin ?? -1;
                    worst = (margin, number).CompareTo((worst.Margin, worst.Variant)) < 0 ? (margin, number, check.Name) : worst;
                }
            }
        });

        foreach ((CheckKind kind, int count) in failed.OrderBy(f => f.Key.Id, StringComparer.Ordinal))
        {
            Console.WriteLine($"{kind}: {count} of 960 variants fail");
        }

        Console.WriteLine($"the worst: variant {worst.Variant}, {worst.Name}, {-100 * worst.Margin:0} % beyond its limit");
        #endregion
    }

    #region a-variant
    private static CircuitDesign Variant(int number)
    {
        (number, int length) = Math.DivRem(number, 10);
        (number, int watts) = Math.DivRem(number, 6);
        (number, int wire) = Math.DivRem(number, 4);
        CircuitRequirements requirements = new()
        {
            Source = Source.BehindResistance(
                ElectricPotential.FromVolts(12.2), ElectricPotential.FromVolts(12.8), ElectricPotential.FromVolts(14.2), ElectricResistance.FromMilliohms(20), ElectricResistance.FromMilliohms(35)),
            Load = Load.ConstantPower(Power.FromWatts(10 + (10 * watts)), minimumVoltage: ElectricPotential.FromVolts(9)),
            Feed = Length.FromMeters(0.5 + (0.5 * length)),
            Return = ReturnPath.Wire(Length.FromMeters(0.5 + (0.5 * length))),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(25 + (10 * number)), LoadedConductors = 3 },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        };
        Conductor conductor = Conductor.Iso6722(MetricSize.Parse(wire switch { 0 => "0.75 mm²", 1 => "1 mm²", 2 => "1.5 mm²", _ => "2.5 mm²" }));
        return CircuitDesigner.Verify(requirements, conductor, FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(7.5)), DesignRules.RoadVehicle);
    }
    #endregion
}
