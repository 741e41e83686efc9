using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class HotFuse
{
    public static void FuseInTheHeat()
    {
        #region fuse-in-the-heat
        // Points of the maker's data sheet: this one is invented.
        AmbientRerating sheet = AmbientRerating.Create(
            "data sheet of the fuse",
            new Reference { Title = "Data sheet of the fuse (invented)", Kind = ReferenceKind.Handbook },
            ambients: [.. new[] { -40.0, 20, 80, 110 }.Select(celsius => Temperature.FromDegreesCelsius(celsius))],
            factors: [1.1, 1.0, 0.88, 0.8]);
        ElectricCurrent load = ElectricCurrent.FromAmperes(11);

        foreach (double celsius in new[] { -10.0, 20, 80 })
        {
            double rule = LoadingRule.RoadVehicle.FactorFor(ElectricCurrent.FromAmperes(15));
            double factor = Math.Min(1, sheet.FactorAt(Temperature.FromDegreesCelsius(celsius))) * rule;
            ElectricCurrent least = FuseLoading.LeastRatingFor(load, factor);
            FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(least);
            Console.WriteLine($"{celsius,3} °C: at least {least.Amperes:0.0} A, so {fuse}");
        }
        #endregion
    }
}
