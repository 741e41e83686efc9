using System.Globalization;
using FsCheck.Xunit;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

[Properties(Arbitrary = [typeof(AnyCircuit)], MaxTest = 400)]
public class DesignProperties
{
    [Property]
    public void Design_Chosen_PassesAndEverySmallerSizeFails(AnyCircuit c)
    {
        CircuitRequirements asked = c.Requirements();
        CircuitDesign design = CircuitDesigner.Design(asked, c.Rules);
        IReadOnlyList<Conductor> sizes = c.Rules.Conductors.Conductors;
        int chosen = design.Rejected.Count;
        for (int i = 0; i < chosen; i++)
        {
            Assert.Same(sizes[i], design.Rejected[i].Conductor);
            Assert.NotEqual(CheckOutcome.Pass, design.Rejected[i].Check.Outcome);

            // With any fuse of the series a smaller size fails, or its rating is not known.
            foreach (Calc.Protection.FuseRating fuse in i < chosen - 3 ? [] : c.Rules.Fuses.Ratings)
            {
                if (fuse.Curve is null)
                {
                    // A fuse of unknown times is no way round a smaller one that failed.
                    continue;
                }

                CircuitDesign verified = CircuitDesigner.Verify(asked, sizes[i], fuse, c.Rules);
                bool unrated = verified.Find(CheckKind.ContinuousCurrent) is { Outcome: CheckOutcome.Undetermined };
                Assert.True(!verified.IsFeasible || unrated, $"{design}; but {verified}");
            }
        }

        Assert.Equal(design.Verdict == Verdict.Pass, design.Advice.Count == 0);
        Assert.Same(sizes[chosen], design.Wire);

        // A choice fails only on what no size or rating cures.
        Assert.All(
            design.IsNearest ? [] : design.Checks.Where(check => check.Outcome == CheckOutcome.Fail),
            check => Assert.Contains(check.Kind, new[] { CheckKind.BreakingCapacity, CheckKind.FuseDistance, CheckKind.LoadVoltage, CheckKind.StartVoltage }));
        CircuitDesign same = CircuitDesigner.Verify(asked, design.Wire, design.Fuse, c.Rules);
        Assert.Equal(design.Checks, same.Checks.Where(check => check.Kind != CheckKind.OvercurrentProtection));
        Assert.True(design.Verdict == same.Verdict || design.Fuse is null);
    }

    [Property]
    public void Design_Verdict_FollowsFromTheChecksAndTheChecksFromTheirNumbers(AnyCircuit c)
    {
        CircuitDesign design = CircuitDesigner.Design(c.Requirements(), c.Rules);
        CircuitDesign forced = CircuitDesigner.Verify(c.Requirements(), c.Rules.Conductors.Conductors[c.Conductors], Blade(10), c.Rules);
        foreach (CircuitDesign d in new[] { design, forced })
        {
            bool open = d.Checks.Any(check => check.Outcome == CheckOutcome.Undetermined), failed = d.Wire is null || d.Checks.Any(check => check.Outcome == CheckOutcome.Fail);
            Assert.Equal(failed ? Verdict.Fail : open ? Verdict.Undetermined : Verdict.Pass, d.Verdict);
            foreach (CheckResult check in d.Checks)
            {
                bool within = check.LimitIsLeast ? check.Value >= check.Limit : check.Value <= check.Limit;
                Assert.True(check.Outcome != CheckOutcome.Pass || within || check.Value is null, check.ToString());
                Assert.True(check.Outcome != CheckOutcome.Pass || check.Margin is null or >= 0, check.ToString());
                Assert.True(check.Outcome != CheckOutcome.Fail || check.Margin is null or < 0, check.ToString());
                Assert.True(check.Outcome != CheckOutcome.Undetermined || (check.Note.Length > 0 && check.Limit is null && check.Margin is null), check.ToString());
            }

            Assert.Equal(d.Checks.Select(check => check.Kind).Distinct().Count(), d.Checks.Count);
        }
    }

    [Property]
    public void Design_AnyCircuit_HasNoNaNAnywhere(AnyCircuit c)
    {
        Everything.AssertFinite(CircuitDesigner.Design(c.Requirements(), c.Rules));
        Everything.AssertFinite(CircuitDesigner.Verify(c.Requirements(load: 10), c.Rules.Conductors.Conductors[c.Conductors + 1], Blade(10), c.Rules));
    }

    [Property]
    public void Design_Twice_GivesTheSameBits(AnyCircuit c)
    {
        CircuitDesign one = CircuitDesigner.Design(c.Requirements(), c.Rules), other = CircuitDesigner.Design(c.Requirements(), c.Rules);
        var (a, b) = (Everything.Numbers(one), Everything.Numbers(other));
        Assert.Equal(a.Select(n => (n.Path, BitConverter.DoubleToInt64Bits(n.Value))), b.Select(n => (n.Path, BitConverter.DoubleToInt64Bits(n.Value))));
        Assert.Equal(one.Checks, other.Checks);
    }

    [Property]
    public void Design_Harder_NeverGivesASmallerWire(AnyCircuit c)
    {
        // Lamps and capacitors aside: a longer path softens their surge, so a smaller fuse and with it a smaller wire can do.
        if (c.LoadKind is 3 or 7)
        {
            return;
        }

        int size = Size(c);
        if (CircuitDesigner.Design(c.Requirements(), c.Rules).IsNearest)
        {
            return;
        }

        Assert.True(Size(c, load: 1.3) >= size, "larger load");

        // Resistances aside: behind more resistance they draw less, so where the drop does not govern a smaller fuse and with it a smaller wire can do.
        if (c.LoadKind is not (2 or 6))
        {
            Assert.True(Size(c, length: 1.3) >= size, "longer");
            Assert.True(Size(c, warmer: 7) >= size, "warmer");
            Assert.True(Size(c, more: 2) >= size, "more conductors");
        }
    }

    [Property]
    public void Design_InOtherUnits_GivesTheSame(AnyCircuit c)
    {
        CircuitRequirements si = c.Requirements();
        CircuitRequirements other = new()
        {
            Source = si.Source,
            Load = si.Load,
            Feed = Length.FromFeet(c.Feed / 0.3048),
            Return = c.ReturnKind <= 1 ? ReturnPath.Wire(Length.FromInches(c.Back / 0.0254)) : si.Return,
            Place = new Place { Ambient = Temperature.FromDegreesFahrenheit((c.Ambient * 1.8) + 32), LoadedConductors = c.Conductors, EngineSpace = c.EngineSpace },
            Insulation = c.Insulation,
            Upstream = c.UpstreamMilliOhms is { } ohms ? ElectricResistance.FromMicroohms(ohms * 1000) : null,
            FuseDistance = Length.FromCentimeters(10),
            Joints = [Joint.Create("joint", ElectricResistance.FromMicroohms(c.JointMilliOhms * 1000))],
        };
        CircuitDesign a = CircuitDesigner.Design(si, c.Rules), b = CircuitDesigner.Design(other, c.Rules);
        Assert.Equal(a.Wire, b.Wire);
        Assert.Equal(a.Fuse, b.Fuse);
        Assert.Equal(a.Checks.Count, b.Checks.Count);
        foreach ((CheckResult x, CheckResult y) in a.Checks.Zip(b.Checks))
        {
            Assert.Equal(x.Kind, y.Kind);
            Assert.Equal(x.Outcome, y.Outcome);
            Same(x.Value, y.Value);
            Same(x.Limit, y.Limit);
        }
    }

    [Property(MaxTest = 60)]
    public void Design_UnderOtherCultures_SaysTheSame(AnyCircuit c)
    {
        string said = Said(CircuitDesigner.Design(c.Requirements(), c.Rules));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string name in new[] { "de-DE", "tr-TR" })
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
                Assert.Equal(said, Said(CircuitDesigner.Design(c.Requirements(), c.Rules)));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Property]
    public void SupplyRange_AgreesWithTheChecks(AnyCircuit c)
    {
        CircuitDesign design = CircuitDesigner.Design(c.Requirements(), c.Rules);
        SupplyRange range = design.SupplyRange;
        Assert.Equal(range.Exists, design.Find(CheckKind.PowerDelivery) is null);
        if (!range.Exists || design.Find(CheckKind.ContinuousCurrent) is { Outcome: CheckOutcome.Undetermined } || design.Fuse is null)
        {
            return;
        }

        OperatingPoint[] points = [range.Minimum, range.Nominal, range.Maximum];
        Near(points.Max(p => p.Drop.Volts), design.Of(CheckKind.VoltageDrop).Value, 1e-9);
        if (design.Find(CheckKind.LoadVoltage) is { } load)
        {
            Near(points.Min(p => p.VoltageAtLoad.Volts), load.Value, 1e-9);
        }

        double heating = points.Max(p => p.HeatingCurrent.Amperes), others = design.Path!.Return.OtherCurrent.Amperes;
        double value = design.Of(CheckKind.ContinuousCurrent).Value!.Value;
        bool shared = c.ReturnKind == 4;
        Assert.True(Math.Abs(value - heating) <= 1e-9 * value || (shared && Math.Abs(value - heating - others) <= 1e-9 * value), $"{value} of {heating} and {others}");
        Near(points.Max(p => p.Current.Amperes) / c.Rules.FusePractice.Loading, design.Of(CheckKind.FuseCarriesLoad).Limit, 1e-8);
        // The small-craft preset takes the lower of its table and the heat balance.
        if (c.IsTable && c.Preset != 1 && c.ReturnKind is not (4 or 5))
        {
            Near(design.Ampacity!.Current.Amperes, design.Of(CheckKind.ContinuousCurrent).Limit, 1e-12);
            Near(points.Max(p => p.HottestConductor.DegreesCelsius), design.Of(CheckKind.ConductorTemperature).Value, 1e-9);
        }
    }

    [Property]
    public void VerifyPath_OfTheDesignsOwnPath_GivesItsChecks(AnyCircuit c)
    {
        CircuitRequirements asked = c.Requirements();
        CircuitDesign design = CircuitDesigner.Design(asked, c.Rules);
        CircuitPath path = CircuitPath.Create(Segment.Create(design.Wire, asked.Feed), asked.Return).WithFeedJoints([.. asked.Joints]);
        if (design.Fuse is not { } fuse)
        {
            return;
        }

        CircuitDesign verified = CircuitDesigner.Verify(asked, path, fuse, c.Rules);
        Assert.Equal(design.Checks.Count, verified.Checks.Count);
        foreach ((CheckResult x, CheckResult y) in design.Checks.Zip(verified.Checks))
        {
            Assert.Equal((x.Kind, x.Outcome), (y.Kind, y.Outcome));
            Same(x.Value, y.Value);
            Same(x.Limit, y.Limit);
        }

        // The path that the result carries is the one of the checks, supply lead included.
        double drop = new[] { verified.SupplyRange!.Minimum, verified.SupplyRange.Nominal, verified.SupplyRange.Maximum }.Max(p => p.Drop.Volts);
        Near(drop, verified.Of(CheckKind.VoltageDrop).Value, 1e-9);
    }

    private static void Same(double? x, double? y)
    {
        Assert.Equal(x is null, y is null);
        if (x is not null)
        {
            Near(x, y, 1e-9);
        }
    }

    private static string Said(CircuitDesign design) =>
        string.Join("\n", [design.ToString(), .. design.Checks.Select(x => x.ToString()), .. design.Assumptions, .. design.Cautions, .. design.Advice]);

    private static int Size(AnyCircuit c, double load = 1, double length = 1, double warmer = 0, int more = 0)
    {
        CircuitDesign design = CircuitDesigner.Design(c.Requirements(load, length, warmer, more), c.Rules);
        return design.IsNearest ? int.MaxValue : design.Rejected.Count;
    }
}
