using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>Solves design problems from their printed text: fuse, then the first row of the table that meets both conditions, then the question.</summary>
internal static class IndependentDesigner
{
    // What of a quotient may be rounding when it is held against a limit that it meets exactly.
    private const double Noise = 1e-12;

    internal static double Solve(Problem problem, PrintedProblem p)
    {
        double amperes = p["P"] / p["U"], allowed = p["p"] / 100 * p["U"];
        double fuse = p.Ratings().First(rating => rating * p["k"] >= amperes * (1 - Noise));
        bool chassis = problem.Topic == ProblemTopic.ChassisReturn;
        double Ohms(string[] row) => chassis
            ? (PrintedProblem.Number(row[2]) * p["L"] * 1e-3) + (p["R_2"] * 1e-3)
            : PrintedProblem.Number(row[2]) * p["L"] * 2e-3;
        string[] chosen = p.Table.First(row => amperes * Ohms(row) <= allowed * (1 + Noise) && PrintedProblem.Number(row[3]) * p["f"] >= fuse * (1 - Noise));
        double section = PrintedProblem.Number(chosen[1]), ohms = Ohms(chosen);
        return problem.Topic switch
        {
            ProblemTopic.SmallestSize => PrintedProblem.First(chosen[0]),
            ProblemTopic.FuseChoice => fuse,
            ProblemTopic.AmpacityDerating => p["f"] * PrintedProblem.Number(chosen[3]),
            ProblemTopic.FuseOpeningTime => Math.Pow(10, Math.Log10(5) - (Math.Log10(p["m"] / 2) / Math.Log10(3.5 / 2))),
            ProblemTopic.WireGeometry => amperes / section,
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
}
