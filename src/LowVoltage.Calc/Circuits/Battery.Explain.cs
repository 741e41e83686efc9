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
        Source source = LeadAcid(coldCranking, standard, blocksInSeries, stringsInParallel, temperature);
        SourceNumbers numbers = source.Numbers;
        SolutionBuilder board = new("Internal resistance from the cold-cranking current");
        LeadAcidBasis basis = (LeadAcidBasis)source.Basis!;
        basis.Give(board);
        basis.WriteOhms(board, numbers);
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Battery);
        return board.Build(
            $"{NumberText.WithUnit(NumberText.Round(numbers.LeastOhms, 4, RoundingDirection.Down), 4, "Ω")} to "
            + $"{NumberText.WithUnit(NumberText.Round(numbers.GreatestOhms, 4, RoundingDirection.Up), 4, "Ω")}; a factor of two either way is as good as it gets.");
    }

    /// <summary>A lead-acid battery as its caller stated it.</summary>
    internal sealed class LeadAcidBasis(double amperes, ColdCrankingTest test, int series, int strings, double? celsius) : SourceBasis
    {
        internal double ColdCrankingAmperes => amperes;

        internal ColdCrankingStandard Standard => test.Standard;

        internal int BlocksInSeries => series;

        internal int StringsInParallel => strings;

        internal double? Celsius => celsius;

        internal override void Give(SolutionBuilder board)
        {
            board.Given("cold-cranking current of one 12 V block", "I_cc", amperes, "A");
            board.Given("12 V blocks in series", "n_s", series, "");
            board.Given("strings in parallel", "n_p", strings, "");
            if (celsius is { } stated)
            {
                board.Given("temperature of the battery", "θ_b", stated, "°C");
            }
        }

        internal override void Write(SolutionBuilder board, in SourceNumbers numbers)
        {
            Volts(board, board.Find("n_s")!, "one 12 V block", (LeadAcidCharge.EmptyVolts, NominalVolts, ChargingVolts), numbers, (LeadAcidCharge.Reference, LeadAcidVoltages));
            WriteOhms(board, numbers);
        }

        internal void WriteOhms(SolutionBuilder board, in SourceNumbers numbers)
        {
            Symbol current = board.Find("I_cc")!, blocks = board.Find("n_s")!, parallel = board.Find("n_p")!;
            Formula rest = Formula.FromNumber(TestRestVolts, "V"), end = Formula.FromNumber(test.EndVolts, "V");
            Symbol bound = board.Step(
                "resistance of one new block in the test, at most", "R_cc", (rest - end) / current, (TestRestVolts - test.EndVolts) / current.Value, "Ω", test.Reference,
                $"The test starts from {Accept.Text(TestRestVolts)} V, six full cells at rest, and the battery must hold at least {Accept.Text(test.EndVolts)} V to its end: it cannot drop more than the difference.", RoundingDirection.Up);
            (Formula least, Formula nominal, Formula greatest) = Factors(board, test, board.Find("θ_b"));
            Formula one = blocks.Value.Equals(1) && parallel.Value.Equals(1) ? bound : bound * (blocks / parallel);
            board.Step("least resistance inside the source: new and warm", "R_min", one * least, numbers.LeastOhms, "Ω", LeadAcidReference, "Gives the greatest short-circuit current.", RoundingDirection.Down);
            board.Step("nominal resistance inside the source", "R_nom", nominal.Kind == FormulaKind.Number ? one : one * nominal, numbers.NominalOhms, "Ω", LeadAcidReference);
            board.Step("greatest resistance inside the source: aged and cold", "R_max", one * greatest, numbers.GreatestOhms, "Ω", LeadAcidReference, "Gives the least short-circuit current.", RoundingDirection.Up);
        }
    }

    /// <summary>A lithium iron phosphate pack as its caller stated it; capacity in Ah.</summary>
    internal sealed class LithiumBasis(int cells, double coulombs) : SourceBasis
    {
        private readonly double ampereHours = coulombs / 3600;

        internal int Cells => cells;

        internal double Coulombs => coulombs;

        internal override void Give(SolutionBuilder board)
        {
            board.Given("cells in series", "n_s", cells, "");
            board.Given("capacity of the pack", "C_b", ampereHours, "Ah");
        }

        internal override void Write(SolutionBuilder board, in SourceNumbers numbers)
        {
            Symbol series = board.Find("n_s")!, capacity = board.Find("C_b")!;
            Volts(board, series, "one cell", (CellCutOffVolts, CellNominalVolts, CellChargeVolts), numbers, (LithiumIronPhosphateReference, LithiumIronPhosphateReference));
            Symbol one = board.LookUp("resistance of a cell times its capacity", "r_c", CellOhmAmpereHours, "Ω·Ah", LithiumIronPhosphateReference);
            Symbol nominal = board.Step("nominal resistance inside the source", "R_nom", series * one / capacity, numbers.NominalOhms, "Ω", LithiumIronPhosphateReference, "Cells of more capacity resist less.");
            Symbol spread = board.LookUp("spread either way between packs, temperatures and ages", "k_sp", CellSpread, "", LithiumIronPhosphateReference);
            board.Step("least resistance inside the source: new and warm", "R_min", nominal / spread, numbers.LeastOhms, "Ω", LithiumIronPhosphateReference, "Gives the greatest short-circuit current.");
            board.Step("greatest resistance inside the source: aged and cold", "R_max", nominal * spread, numbers.GreatestOhms, "Ω", LithiumIronPhosphateReference, "Gives the least short-circuit current.");
        }
    }

    private static (Formula Least, Formula Nominal, Formula Greatest) Factors(SolutionBuilder board, ColdCrankingTest test, Symbol? stated)
    {
        (double least, double greatest) = Factors(test.TestCelsius, stated is null ? null : Temperature.FromDegreesCelsius(stated.Value));
        Formula degrees(double celsius) => Formula.FromNumber(celsius, "°C");
        Formula tested = degrees(test.TestCelsius), warm = degrees(WarmCelsius), cold = degrees(ColdCelsius), span = warm - cold;
        Formula most = MostWarming, few = LeastWarming, aging = Aging;
        string resists = $"A battery resists {Accept.Text(MostWarming)} times as much at {Accept.Text(ColdCelsius)} °C as at {Accept.Text(WarmCelsius)} °C, exponential in between";
        if (stated is null)
        {
            Symbol low = board.Step("factor at the warm end, new", "k_min", Formula.Power(most, (tested - warm) / span), least, "", LeadAcidReference, resists + ".");
            Symbol high = board.Step("factor at the cold end, aged", "k_max", aging * Formula.Power(most, (tested - cold) / span), greatest, "", LeadAcidReference, $"An aged battery resists {Accept.Text(Aging)} times as much as a new one.");
            return (low, 1, high);
        }

        Formula share = (tested - stated) / span;
        resists = $"A battery resists {Accept.Text(LeastWarming)} to {Accept.Text(MostWarming)} times as much at {Accept.Text(ColdCelsius)} °C as at {Accept.Text(WarmCelsius)} °C, exponential in between";
        Symbol fresh = board.Step("factor at that temperature, new", "k_min", Formula.Least(Formula.Power(most, share), Formula.Power(few, share)), least, "", LeadAcidReference, resists + ": the ratio that gives the less resistance.");
        Symbol aged = board.Step(
            "factor at that temperature, aged", "k_max", aging * Formula.Greatest(Formula.Power(most, share), Formula.Power(few, share)), greatest, "", LeadAcidReference, $"The ratio that gives the more resistance, and {Accept.Text(Aging)} times that when aged.");
        Symbol nominal = board.Step("nominal factor", "k_n", Formula.SquareRoot(fresh * aged / aging), Math.Sqrt(least * greatest / Aging), "", LeadAcidReference, "Between new and new: the geometric mean without aging.");
        return (fresh, nominal, aged);
    }
}
