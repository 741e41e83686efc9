using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>Solves problems from their printed text with textbook formulas of its own: neither the library's calculations nor the generator's variables are used.</summary>
internal static class IndependentSolver
{
    // A circular mil in mm²: the area of a circle of 0.0254 mm.
    private const double CircularMil = 0.0254 * 0.0254 * Math.PI / 4;

    /// <summary>The answer in the unit that the problem asks for.</summary>
    internal static double Solve(Problem problem)
    {
        PrintedProblem p = new(problem);
        return problem.Difficulty switch
        {
            Difficulty.OneStep => One(problem, p),
            Difficulty.SeveralSteps => Several(problem, p),
            _ => IndependentDesigner.Solve(problem, p),
        };
    }

    private static double One(Problem problem, PrintedProblem p) => problem.Topic switch
    {
        ProblemTopic.OhmsLaw => !p.Has("I") ? p["U"] / p["R"] : !p.Has("U") ? p["R"] * p["I"] : p["U"] / p["I"],
        ProblemTopic.Power => p.Has("P") ? p["P"] / p["U"] : p["I"] * p["U"],
        ProblemTopic.SeriesResistance => p["R_1"] + p["R_2"] + p["R_3"] + p["R_4"],
        ProblemTopic.ParallelResistance => Beside(Beside(p["R_1"], p["R_2"]), p["R_3"]),
        ProblemTopic.WireResistance => p["ρ"] / p["S"] * p["L"],
        ProblemTopic.TemperatureCorrection => p["R_0"] + (p["R_0"] * p["α"] * (p.Celsius("θ") - 20)),
        ProblemTopic.VoltageDrop => p["R′"] / 1000 * p["L"] * p["I"],
        ProblemTopic.VoltageAtLoad => p["U"] - (2e-3 * p["R"] * p["I"]),
        ProblemTopic.SmallestSize => p["I"] * p["ρ"] * p["L"] / p["ΔU"],
        ProblemTopic.AmpacityDerating => p["f_1"] * p["I_t"],
        ProblemTopic.FuseChoice => p.Ratings().First(rating => rating * p["k"] >= p["I"] * (1 - 1e-12)),
        ProblemTopic.AdiabaticHeating => Math.Pow(p["k"] * p["S"] / p["I"], 2),
        ProblemTopic.ProspectiveCurrent => p["U"] / (p["R_i"] * 1e-3),
        ProblemTopic.BatteryResistance => 1e3 * ((p["U_0"] / p["I"]) - (p["U_1"] / p["I"])),
        ProblemTopic.FuseOpeningTime => PrintedProblem.Number(p.Table.Last(row => PrintedProblem.Number(row[0]) * p["I_n"] <= p["I"] * (1 + 1e-12))[2]),
        ProblemTopic.WireGeometry => problem.Answer.Unit == "cmil" ? Math.Pow(p["d"], 2) : Math.PI * Math.Pow(p["d"] / 2, 2),
        ProblemTopic.BatteryEnergy => p["I"] * (p["t"] / 60),
        ProblemTopic.JointDrop => p["R_1"] * p["n"] * p["I"],
        ProblemTopic.ChassisReturn => (p["I"] * p["R_1"] * 1e-3) + (p["I"] * p["R_2"] * 1e-3),
        ProblemTopic.LampVoltage => p["I_0"] * Math.Exp(p["x"] * Math.Log(p["U"] / p["U_0"])),
        _ => throw new InvalidOperationException(),
    };

    private static double Several(Problem problem, PrintedProblem p) => problem.Topic switch
    {
        ProblemTopic.OhmsLaw => p["I_1"] * p["U_2"] / p["U_1"],
        ProblemTopic.Power => Math.Pow(p["P"] / p["U"], 2) * p["R"] * 1e-3,
        ProblemTopic.SeriesResistance => p["U"] / (1 + (2 * p["R_1"] / p["R"])),
        ProblemTopic.ParallelResistance => (p["n"] * p["U"] / p["R_1"]) + (p["U"] / p["R_2"]),
        ProblemTopic.WireResistance => p.Unit("d") == "mil"
            ? p["ρ"] * 2 * p["L"] / Math.Pow(p["d"], 2)
            : p["ρ"] * 2 * p["L"] / (Math.PI * Math.Pow(p["d"] / 2, 2)),
        ProblemTopic.TemperatureCorrection => p["I"] * p["R′"] * 2e-3 * p["L"] * (1 + ((p.Celsius("θ") - 20) * p["α"])),
        ProblemTopic.VoltageDrop => p["P"] / p["U"] * p["R′"] * 2e-3 * p["L"],
        ProblemTopic.VoltageAtLoad => ConstantPower(p["U"], p["R"] * 1e-3, p["P"]),
        ProblemTopic.SmallestSize => Size(p),
        ProblemTopic.AmpacityDerating => p["I_t"] * p["f_2"] * p["f_1"],
        ProblemTopic.FuseChoice => FuseThenWire(p),
        ProblemTopic.AdiabaticHeating => problem.Answer.Unit == "°F" ? (HeatByHeat(p) * 1.8) + 32 : HeatByHeat(p),
        ProblemTopic.ProspectiveCurrent => p["U"] / ((1e-3 * p["R_i"]) + (p["R′"] * 2e-3 * p["L"])),
        ProblemTopic.BatteryResistance => p["U_0"] - (p["I"] / p["I_k"] * (p["U_0"] - p["U_e"])),
        ProblemTopic.FuseOpeningTime => Interpolated(p),
        ProblemTopic.WireGeometry => Section(problem, p),
        ProblemTopic.BatteryEnergy => p["C"] * p["k"] / 100 * p["U"] / p["P"],
        ProblemTopic.JointDrop => Math.Pow(p["P"] / p["U"], 2) * p["R"] * 1e-3,
        ProblemTopic.ChassisReturn => p["P"] / p["U"] * 1e-3 * ((p["R′"] * p["L"]) + p["R_2"]),
        ProblemTopic.LampVoltage => p["P_0"] * Math.Exp((1 + p["x"]) * Math.Log(p["U"] / p["U_0"])),
        _ => throw new InvalidOperationException(),
    };

    private static double Beside(double one, double other) => one * other / (one + other);

    // The load's voltage by repeated substitution: U = U0 − R·P/U.
    private static double ConstantPower(double supply, double ohms, double watts)
    {
        double volts = supply;
        for (int i = 0; i < 500; i++)
        {
            volts = supply - (ohms * watts / volts);
        }

        return volts;
    }

    private static double Size(PrintedProblem p)
    {
        double amperes = p["P"] / p["U"];
        string[] row = p.Table.First(cells => amperes * PrintedProblem.Number(cells[1]) * 2e-3 * p["L"] <= p["p"] / 100 * p["U"]);
        return PrintedProblem.First(row[0]);
    }

    private static double FuseThenWire(PrintedProblem p)
    {
        double amperes = p["n"] * p["P"] / p["U"], fuse = p.Ratings().First(rating => rating * p["k"] >= amperes * (1 - 1e-12));
        return PrintedProblem.First(p.Table.First(cells => PrintedProblem.Number(cells[1]) * p["f"] >= fuse * (1 - 1e-12))[0]);
    }

    // By small steps of heat: a mm of wire takes up c·S·dθ and is given I²·ρ(θ)/S·dt. Fourth-order steps; per metre, mm² and °C.
    private static double HeatByHeat(PrintedProblem p)
    {
        double square = Math.Pow(p["I"] / p["S"], 2), theta = p.Celsius("θ_i");
        const int Steps = 400;
        double dt = p["t"] / Steps;
        // The equation of handbooks in circular mils, as a rate: its logarithm to the base 10, derived by time.
        double Rate(double celsius) => p.Has("a") ? square * Math.Log(10) * (celsius + p["b"]) / p["a"] : square * p["ρ"] * (1 + (p["α"] * (celsius - 20))) / p["c"];
        for (int i = 0; i < Steps; i++)
        {
            double k1 = Rate(theta), k2 = Rate(theta + (dt / 2 * k1)), k3 = Rate(theta + (dt / 2 * k2)), k4 = Rate(theta + (dt * k3));
            theta += dt / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
        }

        return theta;
    }

    private static double Interpolated(PrintedProblem p)
    {
        double m = p["I"] / p["I_n"];
        (double Multiple, double Longest)[] rows = [.. p.Table.Select(row => (PrintedProblem.Number(row[0]), PrintedProblem.Number(row[2])))];
        int at = Array.FindIndex(rows, row => row.Multiple >= m);
        double share = Math.Log10(m / rows[at - 1].Multiple) / Math.Log10(rows[at].Multiple / rows[at - 1].Multiple);
        return Math.Pow(10, ((1 - share) * Math.Log10(rows[at - 1].Longest)) + (share * Math.Log10(rows[at].Longest)));
    }

    private static double Section(Problem problem, PrintedProblem p) => problem.Answer.Unit == "cmil"
        ? p["n"] * Math.Pow(5 * Math.Exp((36 - p.Gauge("g")) / 39 * Math.Log(92)), 2)
        : p.Unit("d") == "mil"
            ? p["n"] * Math.Pow(p["d"], 2) * CircularMil
            : p["n"] * Math.PI * Math.Pow(p["d"] / 2, 2);
}
