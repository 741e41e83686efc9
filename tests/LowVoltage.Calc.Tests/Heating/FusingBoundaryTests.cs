using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>The ends of the ranges belong to them: what one formula gives there, its inverse takes.</summary>
public class FusingBoundaryTests
{
    public static TheoryData<string> Metals => [.. PreeceMetal.All.Select(m => m.Name)];

    [Theory]
    [MemberData(nameof(Metals))]
    public void PreeceDiameter_OfTheCurrentAtEitherEnd_IsThatEnd(string name)
    {
        PreeceMetal metal = PreeceMetal.All.Single(m => m.Name == name);
        foreach (double end in new[] { 0.05, 12 })
        {
            ElectricCurrent current = FusingEstimates.PreeceCurrent(metal, Length.FromMillimeters(end));
            Assert.Equal(end, FusingEstimates.PreeceDiameter(metal, current).Millimeters, 1e-12 * end);
            bool thick = end > 1;
            ElectricCurrent beyond = A(current.Amperes * (thick ? 1 + 1e-9 : 1 - 1e-9)), within = A(current.Amperes * (thick ? 1 - 1e-9 : 1 + 1e-9));
            Assert.Throws<ArgumentOutOfRangeException>("current", () => FusingEstimates.PreeceDiameter(metal, beyond));
            Assert.Equal(end, FusingEstimates.PreeceDiameter(metal, within).Millimeters, 1e-8 * end);
        }
    }

    [Fact]
    public void OnderdonkTime_OfTheCurrentOfTenSeconds_IsTenSeconds()
    {
        for (double area = 0.1; area < 100; area *= 1.13)
        {
            Area square = Area.FromSquareMillimeters(area);
            ElectricCurrent current = FusingEstimates.OnderdonkCurrent(square, S(10), C(25));
            Assert.Equal(10, FusingEstimates.OnderdonkTime(square, current, C(25)).Seconds, 1e-11);
            Assert.False(FusingEstimates.TryOnderdonkTime(square, A(current.Amperes * (1 - 1e-9)), C(25), out Duration none));
            Assert.Equal(0, none.Seconds);
        }
    }
}
