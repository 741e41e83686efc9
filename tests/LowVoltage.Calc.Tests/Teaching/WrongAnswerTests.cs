using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>That a wrong answer is exactly what its mistake gives: worked out from the printed text, with the mistake made on purpose.</summary>
public class WrongAnswerTests
{
    private static readonly Dictionary<(ProblemTopic Topic, Difficulty Difficulty, string Mistake), Func<PrintedProblem, double>> Mistaken = new()
    {
        [(ProblemTopic.OhmsLaw, Difficulty.SeveralSteps, "ratio upside down")] = p => p["I_1"] * p["U_1"] / p["U_2"],
        [(ProblemTopic.Power, Difficulty.SeveralSteps, "square forgotten")] = p => p["P"] / p["U"] * p["R"] / 1000,
        [(ProblemTopic.Power, Difficulty.SeveralSteps, "supply voltage put across the wire")] = p => p["U"] * p["U"] / (p["R"] / 1000),
        [(ProblemTopic.SeriesResistance, Difficulty.OneStep, "parallel for series")] = p => 1 / ((1 / p["R_1"]) + (1 / p["R_2"]) + (1 / p["R_3"]) + (1 / p["R_4"])),
        [(ProblemTopic.SeriesResistance, Difficulty.OneStep, "return path forgotten")] = p => p["R_1"] + p["R_2"] + p["R_3"],
        [(ProblemTopic.ParallelResistance, Difficulty.OneStep, "series for parallel")] = p => p["R_1"] + p["R_2"] + p["R_3"],
        [(ProblemTopic.ParallelResistance, Difficulty.OneStep, "reciprocal not inverted at the end")] = p => (1 / p["R_1"]) + (1 / p["R_2"]) + (1 / p["R_3"]),
        [(ProblemTopic.WireResistance, Difficulty.SeveralSteps, "diameter for area")] = p => p["ρ"] * 2 * p["L"] / p["d"],
        [(ProblemTopic.WireResistance, Difficulty.SeveralSteps, "diameter used as a radius")] = p => p["ρ"] * 2 * p["L"] / (Math.PI * p["d"] * p["d"]),
        [(ProblemTopic.WireResistance, Difficulty.SeveralSteps, "one way taken for the loop")] = p => p["ρ"] * p["L"] / (Math.PI * p["d"] * p["d"] / 4),
        [(ProblemTopic.TemperatureCorrection, Difficulty.OneStep, "sign of the temperature term")] = p => p["R_0"] * (1 - (p["α"] * (p.Celsius("θ") - 20))),
        [(ProblemTopic.TemperatureCorrection, Difficulty.OneStep, "resistance at 20 °C where another temperature is asked")] = p => p["R_0"],
        [(ProblemTopic.TemperatureCorrection, Difficulty.SeveralSteps, "20 °C not subtracted")] = p => p["I"] * p["R′"] * 2 * p["L"] / 1000 * (1 + (p["α"] * p.Celsius("θ"))),
        [(ProblemTopic.VoltageDrop, Difficulty.OneStep, "doubled once too often")] = p => p["I"] * p["R′"] * 2 * p["L"] / 1000,
        [(ProblemTopic.VoltageDrop, Difficulty.SeveralSteps, "one way taken for the loop")] = p => p["P"] / p["U"] * p["R′"] * p["L"] / 1000,
        [(ProblemTopic.VoltageDrop, Difficulty.SeveralSteps, "watts for amperes")] = p => p["P"] * p["R′"] * 2 * p["L"] / 1000,
        [(ProblemTopic.VoltageDrop, Difficulty.SeveralSteps, "per 1000 forgotten")] = p => p["P"] / p["U"] * p["R′"] * 2 * p["L"],
        [(ProblemTopic.VoltageAtLoad, Difficulty.OneStep, "one lead only")] = p => p["U"] - (p["I"] * p["R"] / 1000),
        [(ProblemTopic.VoltageAtLoad, Difficulty.SeveralSteps, "current taken at the supply voltage")] = p => p["U"] - (p["P"] / p["U"] * p["R"] / 1000),
        [(ProblemTopic.AmpacityDerating, Difficulty.OneStep, "derating applied twice")] = p => p["I_t"] * p["f_1"] * p["f_1"],
        [(ProblemTopic.AmpacityDerating, Difficulty.SeveralSteps, "derating applied twice")] = p => p["I_t"] * p["f_1"] * p["f_1"] * p["f_2"],
        [(ProblemTopic.AmpacityDerating, Difficulty.SeveralSteps, "factors averaged")] = p => p["I_t"] * (p["f_1"] + p["f_2"]) / 2,
        [(ProblemTopic.FuseChoice, Difficulty.OneStep, "loading of the fuse forgotten")] = p => p.Ratings().First(rating => rating >= p["I"]),
        [(ProblemTopic.FuseChoice, Difficulty.SeveralSteps, "fuse sized for the load but not the wire")] = p =>
            PrintedProblem.First(p.Table.First(row => PrintedProblem.Number(row[1]) * p["f"] >= p["n"] * p["P"] / p["U"])[0]),
        [(ProblemTopic.AdiabaticHeating, Difficulty.OneStep, "square forgotten")] = p => p["k"] * p["S"] / p["I"],
        [(ProblemTopic.ProspectiveCurrent, Difficulty.SeveralSteps, "source resistance forgotten")] = p => p["U"] / (p["R′"] * 2 * p["L"] / 1000),
        [(ProblemTopic.ProspectiveCurrent, Difficulty.SeveralSteps, "one way taken for the loop")] = p => p["U"] / ((p["R_i"] / 1000) + (p["R′"] * p["L"] / 1000)),
        [(ProblemTopic.BatteryResistance, Difficulty.OneStep, "whole voltage instead of the difference")] = p => p["U_0"] / p["I"] * 1000,
        [(ProblemTopic.BatteryEnergy, Difficulty.OneStep, "minutes for hours")] = p => p["I"] * p["t"],
        [(ProblemTopic.JointDrop, Difficulty.OneStep, "one joint only")] = p => p["I"] * p["R_1"],
        [(ProblemTopic.ChassisReturn, Difficulty.OneStep, "return path forgotten")] = p => p["I"] * p["R_1"] / 1000,
        [(ProblemTopic.ChassisReturn, Difficulty.SeveralSteps, "return path taken for a second wire")] = p => p["P"] / p["U"] * p["R′"] * p["L"] * 2 / 1000,
        [(ProblemTopic.LampVoltage, Difficulty.SeveralSteps, "lamp taken for a fixed resistance")] = p => p["P_0"] * Math.Pow(p["U"] / p["U_0"], 2),
    };

    [Fact]
    public void WrongAnswer_IsExactlyWhatItsMistakeGives()
    {
        foreach (((ProblemTopic topic, Difficulty difficulty, string mistake), Func<PrintedProblem, double> mistaken) in Mistaken)
        {
            int met = 0;
            for (int seed = 0; seed < 60; seed++)
            {
                Problem problem = ProblemGenerator.Create(seed, topic, difficulty, ProblemUnits.Metric);
                if (problem.KnownMistakes.FirstOrDefault(wrong => wrong.Mistake.Name == mistake) is { } wrong)
                {
                    met++;
                    // Two routes of double arithmetic.
                    Assert.Equal(1, mistaken(new PrintedProblem(problem)) / wrong.Value, 1e-9);
                }
            }

            Assert.True(met > 0, $"{topic}, {difficulty}: nobody makes the mistake '{mistake}'.");
        }
    }

    [Fact]
    public void FuseProblems_NeverPutABladeFuseAbove32Volts()
    {
        // Road-vehicle blade fuses: 32 V (ISO 8820-3, from memory; the 58 V kind has its own name).
        for (int seed = 0; seed < 150; seed++)
        {
            Problem problem = ProblemGenerator.Create(seed, ProblemTopic.FuseChoice, seed % 2 == 0 ? Difficulty.SeveralSteps : Difficulty.Design);
            Assert.InRange(new PrintedProblem(problem)["U"], 12, 32);
        }
    }

    [Fact]
    public void Texts_OfEveryPart()
    {
        Problem problem = ProblemGenerator.Create(1, ProblemTopic.VoltageDrop, Difficulty.OneStep, ProblemUnits.Metric, ProblemForm.MultipleChoice);

        Assert.Equal(problem.Statement, problem.ToString());
        Assert.Equal(problem.Answer.Text, problem.Answer.ToString());
        Assert.Equal($"{problem.WrongAnswers[0].Text} ({problem.WrongAnswers[0].Mistake.Name})", problem.WrongAnswers[0].ToString());
        Assert.Equal($"I = {problem.Givens[0].Text}", problem.Givens[0].ToString());
        Assert.Equal($"A) {problem.Choices[0].Text}", problem.Choices[0].ToString());
        Assert.Equal("Correct: Right.", problem.Grade(problem.Answer.Text).ToString());
        Assert.Equal("current", problem.Givens[0].Meaning);
        Assert.Equal("the voltage drop", problem.Answer.Quantity);
        Assert.Equal("Wiring", ProblemSheet.Of("Wiring", [problem]).ToString());
    }
}
