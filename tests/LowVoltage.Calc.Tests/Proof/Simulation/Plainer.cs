using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>Makes a case that disagrees as plain as it can be while it still disagrees in the same check.</summary>
internal static class Plainer
{
    private static readonly Func<CaseGiven, CaseGiven>[] Steps =
    [
        c => c with { Mains = [] },
        c => c with { Mains = [.. c.Mains.Take(1)] },
        c => c with { Mains = [.. c.Mains.Skip(1)] },
        c => c with { Mains = [.. c.Mains.Select(m => m with { LetThrough = null, Withstood = null, Melting = null, Ambient = null })] },
        c => c with { JointOhms = 0 },
        c => c with { WallMillimeters = null },
        c => c with { Intermittent = false, Sheathed = false },
        c => c with { FuseMeters = c.Rules.Preset == 1 ? 0.1 : null },
        c => c with { FuseAmbient = null },
        c => c with { Starts = null },
        c => c with { Laid = [.. c.Laid.Select(s => s with { Place = null })] },
        c => c with { Place = c.Place with { Altitude = 0 } },
        c => c with { Place = c.Place with { EngineSpace = false } },
        c => c with { Place = c.Place with { Loading = 1 } },
        c => c with { Place = c.Place with { Loaded = null } },
        c => c with { Place = c.Place with { Ambient = 30 } },
        c => c with { Place = c.Place with { Ambient = Math.Round(c.Place.Ambient / 10) * 10 } },
        c => c with { Rules = new RulesGiven(c.Rules.Preset) },
        c => c with { Rules = new RulesGiven(c.Rules.Preset) { Fuses = c.Rules.Fuses } },
        c => c with { Rules = new RulesGiven(c.Rules.Preset) { Basis = c.Rules.Basis } },
        c => c with { Source = new SourceGiven(SourceType.LeadAcid, 600, c.Source.Type == SourceType.LeadAcid ? c.Source.B : 1, 1) },
        c => c.Source.Parts.Length > 0 ? c with { Source = c.Source.Parts[0] } : c,
        c => c with { UpstreamOhms = c.UpstreamOhms is null ? null : 0.02 },
        c => c with { DropPercent = 15, DropVolts = null },
        c => c with { DropPercent = null, DropVolts = null },
        c => c with { Load = c.Load with { LeastVolts = null } },
        c => c with { Load = c.Load with { CapacitorFarads = null } },
        c => c with { Load = c.Load with { Duty = null } },
        c => c with { Load = c.Load with { CutsOut = false } },
        c => c.Load.Parts.Length > 0 ? c with { Load = c.Load.Parts[0] } : c,
        c => c.Load.Parts.Length > 2 ? c with { Load = c.Load with { Parts = [.. c.Load.Parts.Take(2)] } } : c,
        c => c.Load.Parts.Length > 2 ? c with { Load = c.Load with { Parts = [.. c.Load.Parts.Skip(1)] } } : c,
        c => c.Load.Parts.Length > 0 ? c with { Load = c.Load with { Parts = [.. c.Load.Parts.Select(p => p with { LeastVolts = null, Duty = null, CapacitorFarads = null })] } } : c,
        c => c with { Back = new BackGiven(BackType.Chassis, Ohms: 0.002) },
        c => c.Laid.Length > 1 ? c : c with { Back = new BackGiven(BackType.Wire, c.Laid.Length > 0 ? c.Laid[0].Meters : c.Feed) },
        c => c.Laid.Length > 1 ? c with { Laid = [c.Laid[0]] } : c,
        c => c.Laid.Length > 1 ? c with { Laid = [.. c.Laid.Skip(1)] } : c,
        c => c with { Laid = [.. c.Laid.Select(s => s with { Celsius = null })] },
        c => c with { Laid = [.. c.Laid.Select(s => s with { Parallel = 1 })] },
        c => c with { Feed = Round(c.Feed) },
        c => c with { Laid = [.. c.Laid.Select(s => s with { Meters = Round(s.Meters) })] },
        c => c with { Insulation = new("InsulationMaterial.CrossLinkedPolyethylene", InsulationMaterial.CrossLinkedPolyethylene) },
        c => c with { Insulation = new("InsulationMaterial.PolyvinylChloride", InsulationMaterial.PolyvinylChloride) },
        c => c with { Load = c.Load with { A = Round(c.Load.A), B = Round(c.Load.B), C = Round(c.Load.C), D = Round(c.Load.D) } },
    ];

    /// <summary>The plainest case found.</summary>
    /// <param name="given">A case that disagrees.</param>
    /// <param name="what">Kind of disagreement and check: <c>false pass: InrushHeld</c>.</param>
    public static Trial Make(CaseGiven given, string what)
    {
        Trial best = Trial.Of(given);
        for (int round = 0; round < 2; round++)
        {
            foreach (Func<CaseGiven, CaseGiven> step in Steps)
            {
                CaseGiven next = step(best.Given);
                if (TryTrial(next) is { } trial && Disagrees(trial, what))
                {
                    best = trial;
                }
            }
        }

        return best;
    }

    private static double Round(double value) => value == 0 || double.IsNaN(value) ? value : Math.Round(value / Math.Pow(10, Math.Floor(Math.Log10(value)))) * Math.Pow(10, Math.Floor(Math.Log10(value)));

    private static bool Disagrees(Trial trial, string what)
    {
        string check = what[(what.IndexOf(": ", StringComparison.Ordinal) + 2)..];
        return (what.StartsWith("false pass", StringComparison.Ordinal) ? trial.FalsePasses
            : what.StartsWith("pass in", StringComparison.Ordinal) ? trial.PassesInOpenVerdicts
            : what.StartsWith("left", StringComparison.Ordinal) ? trial.LeftOpen
            : trial.FalseFails).Contains(check);
    }

    // A plainer case may be one that the library refuses to be asked.
    private static Trial? TryTrial(CaseGiven given)
    {
        try
        {
            return Trial.Of(given);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
