using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public static partial class Battery
{
    /// <summary>The working of <see cref="LeadAcid"/>: least, nominal and greatest resistance from the cold-cranking current.</summary>
    /// <inheritdoc cref="LeadAcid"/>
    /// <returns>The steps, the greatest resistance last.</returns>
    public static WorkedSolution ExplainLeadAcid(
        ElectricCurrent coldCranking,
        ColdCrankingStandard standard = ColdCrankingStandard.SaeJ537,
        int blocksInSeries = 1,
        int stringsInParallel = 1,
        Temperature? temperature = null)
    {
        SourceNumbers numbers = LeadAcid(coldCranking, standard, blocksInSeries, stringsInParallel, temperature).Numbers;
        ColdCrankingTest test = ColdCrankingTest.Of(standard);
        SolutionBuilder board = new("Internal resistance from the cold-cranking current");
        Symbol current = board.Given("cold-cranking current", "I_cc", Accept.Amperes(coldCranking, nameof(coldCranking)), "A");
        Symbol series = board.Given("12 V blocks in series", "n_s", blocksInSeries, ""), parallel = board.Given("strings in parallel", "n_p", stringsInParallel, "");
        Symbol rest = board.LookUp("voltage at rest of six full cells", "V_0", TestRestVolts, "V", LeadAcidReference);
        Symbol end = board.LookUp("least voltage at the end of the test", "V_e", test.EndVolts, "V", test.Reference);
        Symbol tested = board.LookUp("temperature of the test", "θ_t", test.TestCelsius, "°C", test.Reference);
        Symbol bound = board.Step(
            "resistance of one new block in the test, at most", "R_c", (rest - end) / current, (TestRestVolts - test.EndVolts) / current.Value, "Ω", LeadAcidReference,
            "The battery must hold at least the end voltage, so it cannot drop more than the difference.", RoundingDirection.Up);
        (Symbol least, Symbol nominal, Symbol greatest) = Factors(board, test, tested, temperature);
        Formula scale = series / parallel;
        board.Step("least resistance: new and warm", "R_min", bound * scale * least, numbers.LeastOhms, "Ω", LeadAcidReference, "Gives the greatest short-circuit current.", RoundingDirection.Down);
        board.Step("nominal resistance", "R_n", bound * scale * nominal, numbers.NominalOhms, "Ω", LeadAcidReference);
        board.Step("greatest resistance: aged and cold", "R_max", bound * scale * greatest, numbers.GreatestOhms, "Ω", LeadAcidReference, "Gives the least short-circuit current.", RoundingDirection.Up);
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Battery);
        return board.Build(
            $"{NumberText.WithUnit(NumberText.Round(numbers.LeastOhms, 4, RoundingDirection.Down), 4, "Ω")} to "
            + $"{NumberText.WithUnit(NumberText.Round(numbers.GreatestOhms, 4, RoundingDirection.Up), 4, "Ω")}; a factor of two either way is as good as it gets.");
    }

    private static (Symbol Least, Symbol Nominal, Symbol Greatest) Factors(SolutionBuilder board, ColdCrankingTest test, Symbol tested, Temperature? temperature)
    {
        (double least, double greatest) = Factors(test.TestCelsius, temperature);
        Symbol most = board.LookUp("resistance at -18 °C over that at 25 °C, at most", "w_max", MostWarming, "", LeadAcidReference);
        Symbol aging = board.LookUp("resistance of an aged battery over a new one", "a", Aging, "", LeadAcidReference);
        Symbol warm = Degrees(board, "warm end of the range", "θ_w", WarmCelsius), cold = Degrees(board, "cold end of the range", "θ_c", ColdCelsius);
        Formula span = warm - cold;
        Symbol low, high;
        if (temperature is null)
        {
            low = board.Step("factor at the warm end, new", "k_min", Formula.Power(most, (tested - warm) / span), least, "", LeadAcidReference, "Exponential in temperature between the two ends.");
            high = board.Step("factor at the cold end, aged", "k_max", aging * Formula.Power(most, (tested - cold) / span), greatest, "", LeadAcidReference, "Exponential in temperature, times the aging.");
        }
        else
        {
            Symbol few = board.LookUp("resistance at -18 °C over that at 25 °C, at least", "w_min", LeastWarming, "", LeadAcidReference);
            Symbol stated = Degrees(board, "temperature of the battery", "θ", temperature.Value.DegreesCelsius);
            Formula share = (tested - stated) / span;
            low = board.Step(
                "factor at that temperature, new", "k_min", Formula.Least(Formula.Power(most, share), Formula.Power(few, share)), least, "", LeadAcidReference, "Exponential in temperature; the ratio that gives the less resistance.");
            high = board.Step(
                "factor at that temperature, aged", "k_max", aging * Formula.Greatest(Formula.Power(most, share), Formula.Power(few, share)), greatest, "", LeadAcidReference, "The ratio that gives the more resistance, times the aging.");
        }

        Symbol nominal = temperature is null
            ? board.LookUp("nominal factor", "k_n", 1, "", LeadAcidReference, "The bound itself.")
            : board.Step("nominal factor", "k_n", Formula.SquareRoot(low * high / aging), Math.Sqrt(least * greatest / Aging), "", LeadAcidReference, "Between new and new: the geometric mean without aging.");
        return (low, nominal, high);
    }

    private static Symbol Degrees(SolutionBuilder board, string sought, string name, double celsius) => board.LookUp(sought, name, celsius, "°C", LeadAcidReference);
}
