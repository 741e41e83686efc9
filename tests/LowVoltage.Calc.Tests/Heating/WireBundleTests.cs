using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class WireBundleTests
{
    // 1.628 + 2·0.6 mm.
    private const double Across = 2.828;

    private static readonly Wire One = Solid(1.628, 0.6);

    [Theory]
    [InlineData(1, BundleArrangement.Alone, 1.000)]
    [InlineData(2, BundleArrangement.Pair, 1.637)]
    [InlineData(3, BundleArrangement.Trefoil, 1.955)]
    [InlineData(4, BundleArrangement.Bundle, 2.582)]
    public void Create_ByCount_KnowsItsArrangementAndDiameter(int wires, BundleArrangement arrangement, double ratio)
    {
        WireBundle bundle = WireBundle.Create(One, wires, wires);
        Assert.Equal(arrangement, bundle.Arrangement);
        Assert.InRange(bundle.Diameter.Millimeters / Across, ratio - 0.0005, ratio + 0.0005);
        Assert.Equal(wires * Across * Across, bundle.Fill * bundle.Diameter.Millimeters * bundle.Diameter.Millimeters, 9);
        Assert.Null(bundle.SleeveDiameter);
    }

    [Fact]
    public void NamedArrangements_AreLoadedThroughout()
    {
        Assert.Equal((BundleArrangement.Alone, 1, 1), Of(WireBundle.Alone(One)));
        Assert.Equal((BundleArrangement.Pair, 2, 2), Of(WireBundle.Pair(One)));
        Assert.Equal((BundleArrangement.Trefoil, 3, 3), Of(WireBundle.Trefoil(One)));
        Assert.Equal((BundleArrangement.ThreeFlat, 3, 3), Of(WireBundle.ThreeFlat(One)));
        WireBundle twin = WireBundle.TwinCable(One, Length.FromMillimeters(8));
        Assert.Equal((BundleArrangement.TwinCable, 2, 2), Of(twin));
        Assert.Equal(8, twin.Diameter.Millimeters, 12);
        Assert.Equal(2 * Across * Across / 64, twin.Fill, 12);
        Assert.Equal(BundleHeat.CurrentFor(WireBundle.Trefoil(One), Air(30), C(70)), BundleHeat.CurrentFor(WireBundle.ThreeFlat(One), Air(30), C(70)));
    }

    [Fact]
    public void InSleeve_KeepsTheWiresAndKnowsItsDiameter()
    {
        WireBundle pair = WireBundle.Pair(One), sleeved = pair.InSleeve(), snug = pair.InSleeve(pair.Diameter);
        Assert.Equal(Of(pair), Of(sleeved));
        Assert.Equal(pair.Diameter, sleeved.Diameter);
        Assert.Equal(1.5 * pair.Diameter.Millimeters, sleeved.SleeveDiameter!.Value.Millimeters, 12);
        Assert.Equal(pair.Diameter.Millimeters, snug.SleeveDiameter!.Value.Millimeters, 12);
    }

    [Fact]
    public void Create_TheFill_CountsFromFourWires()
    {
        Assert.Equal(WireBundle.Create(One, 3, 3).Diameter, WireBundle.Create(One, 3, 3, 0.9).Diameter);
        Assert.True(WireBundle.Create(One, 4, 4, 0.9).Diameter < WireBundle.Create(One, 4, 4).Diameter);
    }

    [Fact]
    public void Arrangements_OutOfRange_NameTheParameter()
    {
        Assert.Throws<ArgumentNullException>("wire", () => WireBundle.Pair(null!));
        Assert.Throws<ArgumentNullException>("wire", () => WireBundle.ThreeFlat(null!));
        Assert.Throws<ArgumentNullException>("core", () => WireBundle.TwinCable(null!, Length.FromMillimeters(8)));
        _ = WireBundle.TwinCable(One, Length.FromMillimeters(2 * Across));
        Refused("outerDiameter", () => WireBundle.TwinCable(One, Length.FromMillimeters(2 * Across * 0.999)), "from 0.005656 m to 0.02828 m; it was 0.00565034 m");
        Assert.Throws<ArgumentOutOfRangeException>("outerDiameter", () => WireBundle.TwinCable(One, Length.FromMillimeters(10 * Across * 1.001)));
        WireBundle pair = WireBundle.Pair(One);
        Assert.Throws<ArgumentOutOfRangeException>("innerDiameter", () => pair.InSleeve(0.999 * pair.Diameter));
        Assert.Throws<ArgumentOutOfRangeException>("innerDiameter", () => pair.InSleeve(10.01 * pair.Diameter));
        Assert.Throws<ArgumentOutOfRangeException>("innerDiameter", () => pair.InSleeve(Length.Zero));
        Assert.Contains("2 of 3", Assert.Throws<InvalidOperationException>(() => WireBundle.Create(One, 3, 1).InSleeve()).Message, StringComparison.Ordinal);
    }

    private static void Refused(string name, Action call, string says) => Assert.Contains(says, Assert.Throws<ArgumentOutOfRangeException>(name, call).Message, StringComparison.Ordinal);

    private static (BundleArrangement Arrangement, int Wires, int Loaded) Of(WireBundle bundle) => (bundle.Arrangement, bundle.Wires, bundle.Loaded);
}
