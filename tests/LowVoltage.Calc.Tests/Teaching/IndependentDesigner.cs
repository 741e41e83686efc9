using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>Solves design problems from their printed text: fuse, then the first row of the table that meets both conditions, then the question.</summary>
internal static class IndependentDesigner
{
    // What of a quotient may be rounding when it is held against a limit that it meets exactly.
    private const double Noise = 1e-12;

    internal static double Solve(Problem problem, PrintedProblem p)
    {
        int at = Choose(problem, p);
        string[] chosen = p.Table[at];
        double amperes = p["P"] / p["U"], fuse = Fuse(p), ohms = Ohms(problem, p, at);
        // A metric size is its own cross-section; a gauge has a column for it.
        double section = chosen.Length == 4 ? PrintedProblem.Number(chosen[1]) : PrintedProblem.First(chosen[0]);
        return problem.Topic switch
        {
            ProblemTopic.SmallestSize => PrintedProblem.First(chosen[0]),
            ProblemTopic.FuseChoice => fuse,
            ProblemTopic.AmpacityDerating => p["f"] * PrintedProblem.Number(chosen[^1]),
            ProblemTopic.FuseOpeningTime => Math.Pow(10, Math.Log10(5) - (Math.Log10(p["m"] / 2) / Math.Log10(3.5 / 2))),
            ProblemTopic.WireGeometry => problem.Answer.Unit == "cmil/A" ? section / amperes : amperes / section,
            ProblemTopic.AdiabaticHeating => Math.Pow(p["k_c"] * section / p["I_p"], 2),
            ProblemTopic.WireResistance or ProblemTopic.SeriesResistance => ohms,
            ProblemTopic.ParallelResistance => 1 / ((1 / ohms) + (1 / ohms)),
            ProblemTopic.TemperatureCorrection => ohms + (ohms * p["α"] * (p.Celsius("θ") - 20)),
            ProblemTopic.Power => amperes * (amperes * ohms),
            ProblemTopic.BatteryEnergy => amperes * (amperes * ohms) * p["t"],
            ProblemTopic.VoltageAtLoad => p["U"] - (amperes * ohms),
            ProblemTopic.BatteryResistance => (amperes * ohms) + (amperes * p["R_i"] * 1e-3),
            ProblemTopic.ProspectiveCurrent => p["U"] / ((p["R_i"] * 1e-3) + ohms),
            ProblemTopic.JointDrop => (amperes * ohms) + (amperes * p["n"] * p["R_1"] * 1e-3),
            ProblemTopic.LampVoltage => 100 * amperes * ohms / p["U"],
            _ => amperes * ohms,
        };
    }

    internal static double Fuse(PrintedProblem p) => p.Ratings().First(rating => rating * p["k"] >= p["P"] / p["U"] * (1 - Noise));

    /// <summary>The row of the table that a student takes: the first that meets both conditions.</summary>
    internal static int Choose(Problem problem, PrintedProblem p)
    {
        double amperes = p["P"] / p["U"], allowed = p["p"] / 100 * p["U"], fuse = Fuse(p);
        return Enumerable.Range(0, p.Table.Length).First(row =>
            amperes * Ohms(problem, p, row) <= allowed * (1 + Noise) && PrintedProblem.Number(p.Table[row][^1]) * p["f"] >= fuse * (1 - Noise));
    }

    /// <summary>Out and back: two wires, or one and the metal that leads back.</summary>
    internal static double Ohms(Problem problem, PrintedProblem p, int row)
    {
        double perLength = PrintedProblem.Number(p.Table[row][^2]) * 1e-3;
        return problem.Topic == ProblemTopic.ChassisReturn ? (perLength * p["L"]) + (p["R_2"] * 1e-3) : 2 * perLength * p["L"];
    }
}
