using System.Globalization;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>The letters of a load in a worked solution: what the caller stated stands in the givens, what follows from it is written when it is first used.</summary>
/// <remarks>A second load of a kind has a 2 behind its letters, and so on.</remarks>
internal sealed class LoadSymbols(SolutionBuilder board)
{
    private readonly List<(Symbol Share, Symbol? Period, double Heat, string Mark)> duties = [];
    private readonly List<(Load Load, DutyCycle[] Duties)> loads = [];
    private readonly List<(Symbol Given, Symbol? Efficiency, double Watts, string Mark)> powers = [];
    private readonly List<(Symbol Watts, Symbol Volts, Symbol Ratio, double Amperes, double ColdOhms, string Mark)> lamps = [];

    /// <summary>The one there is; null when there are none or several.</summary>
    internal static Symbol? Only(IReadOnlyList<Formula> symbols) => symbols.Count == 1 ? symbols[0] as Symbol : null;

    /// <summary>Loads that draw a current at any voltage.</summary>
    internal List<Formula> Currents { get; } = [];

    internal List<Symbol> Resistances { get; } = [];

    internal List<Symbol> Capacitors { get; } = [];

    internal List<(Symbol Peak, Symbol Seconds, Symbol? Volts)> Motors { get; } = [];

    /// <summary>Loads of measured points.</summary>
    internal List<MeasuredLoad> Measured { get; } = [];

    internal int Lamps => lamps.Count;

    internal void Duty(DutyCycle duty)
    {
        if (duty.OnSeconds > 0)
        {
            string mark = Mark("t_on");
            duties.Add((board.Given("time that the load is on in each period", "t_on" + mark, duty.OnSeconds, "s"), board.Given("period of the load", "T_on" + mark, duty.PeriodSeconds, "s"), duty.HeatShare, mark));
        }
        else
        {
            duties.Add((board.Given("share of the time that the load is on", Free("D"), duty.Fraction, ""), null, duty.HeatShare, ""));
        }
    }

    /// <summary>How each load's current was thinned where that is no one formula.</summary>
    internal string Thinned()
    {
        string share = loads.Exists(at => at.Duties.Length > 1) ? "the smallest share of the heat that its duty cycles leave" : "its share of the heat";
        string starts = loads.Exists(at => at.Load.Starts && at.Load.HasStatedTimes) ? " A motor's start in each period counts with the current that it takes at this voltage, by its share of the time." : "";
        return $"Each load's current times the root of {share}, added up: at most that, whatever their timing.{starts}";
    }

    /// <summary>Remembers what the duty cycles thin.</summary>
    internal void Thin(Load load) => loads.AddRange(load.Leaves);

    /// <summary>The current that heats, squared, where the load is one motor whose starting current holds at any voltage, with one duty cycle of stated times; else null.</summary>
    internal Formula? PulsedMotor()
    {
        if (loads.Count(at => at.Load is not CapacitorInput) != 1 || duties.Count != 1 || duties[0].Period is not { } period || Motors.Count != 1 || Motors[0].Volts is not null)
        {
            return null;
        }

        Symbol on = duties[0].Share, start = Motors[0].Seconds;
        Formula run = Formula.Square(Currents[0]), peak = Formula.Square(Motors[0].Peak);
        Symbol reached = EndOfPulse(on, period, duties[0].Heat, duties[0].Mark);
        return start.Value < on.Value ? (run * reached) + ((peak - run) * (start / period)) : peak * reached;
    }

    /// <summary>The share of the full heat that each duty cycle leaves.</summary>
    internal List<Symbol> HeatShares() => [.. duties.Select(d => d.Period is null ? d.Share : EndOfPulse(d.Share, d.Period, d.Heat, d.Mark))];

    internal void Power(double given, double efficiency)
    {
        string mark = Mark(efficiency < 1 ? "P_out" : "P_L");
        powers.Add(efficiency < 1
            ? (board.Given("power that the load gives", "P_out" + mark, given, "W"), board.Given("efficiency of the load", "η_L" + mark, efficiency, ""), given / efficiency, mark)
            : (board.Given("power that the load draws, at any voltage", "P_L" + mark, given, "W"), null, given, mark));
    }

    internal void Current(double amperes, string meaning, string name) => Currents.Add(board.Given(meaning, Free(name), amperes, "A"));

    internal void Resistance(double ohms) => Resistances.Add(board.Given("resistance of the load", Free("R_L"), ohms, "Ω"));

    internal void Capacitor(double farads) => Capacitors.Add(board.Given("capacitor at the input of the load", Free("C"), farads * 1e6, "µF"));

    internal void Lamp(double watts, double volts, double ratio, double amperes, double coldOhms)
    {
        string mark = Mark("P_r");
        lamps.Add((
            board.Given("rated power of the lamp", "P_r" + mark, watts, "W"),
            board.Given("rated voltage of the lamp", "U_r" + mark, volts, "V"),
            board.Given("resistance of the lamp hot over cold", "k_c" + mark, ratio, ""),
            amperes,
            coldOhms,
            mark));
    }

    internal void Measure(MeasuredLoad load)
    {
        Measured.Add(load);
        board.Given("measured points of the load", load.Points);
    }

    internal void Motor(double running, double peak, double locked, double seconds, double? volts)
    {
        Current(running, "current of the motor when it runs", "I_run");
        Symbol most = board.Given("greatest current of the motor while it starts", Free("I_pk"), peak, "A");
        board.Given("current of the motor with its rotor locked", Free("I_lock"), locked, "A");
        Symbol start = board.Given("duration of the motor's start", Free("t_run"), seconds, "s");
        Symbol? rated = volts is { } at ? board.Given("voltage that the motor's starting currents are stated for", Free("U_mot"), at, "V") : null;
        Motors.Add((most, start, rated));
    }

    /// <summary>The power that each load draws; a step where it is not what was stated.</summary>
    internal List<Formula> Powers() => [.. powers.Select(p => (Formula)(p.Efficiency is { } efficiency
        ? board.Step("power that the load draws, at any voltage", "P_L" + p.Mark, p.Given / efficiency, p.Watts, "W", null, "What it gives over its efficiency. Its current rises when its voltage falls.")
        : p.Given))];

    /// <summary>Rated current and voltage of each lamp.</summary>
    internal List<(Symbol Amperes, Symbol Volts)> RatedLamps() => [.. lamps.Select(l => (RatedAmperes(l.Watts, l.Volts, l.Amperes, l.Mark), l.Volts))];

    /// <summary>The resistance of each lamp while it is cold.</summary>
    internal List<Symbol> ColdLamps() => [.. lamps.Select(l => board.Step(
        "resistance of the cold lamp", "R_c" + l.Mark, l.Volts / (l.Ratio * RatedAmperes(l.Watts, l.Volts, l.Amperes, l.Mark)), l.ColdOhms, "Ω", LampLoad.InrushReference, "A cold filament has a fraction of its hot resistance."))];

    private Symbol RatedAmperes(Symbol watts, Symbol volts, double amperes, string mark) =>
        board.Step("current of the lamp at its rated voltage", "I_r" + mark, watts / volts, amperes, "A", null);

    private Symbol EndOfPulse(Symbol on, Symbol period, double heat, string mark)
    {
        Symbol tau = TimeConstant();
        return board.Step(
            "share of the steady rise that is reached at the end of a pulse", "k_on" + mark, (1 - Formula.Exponential(-(on / tau))) / (1 - Formula.Exponential(-(period / tau))), heat, "", null,
            "The temperature rises and falls exponentially, after many pulses between the same two values.");
    }

    private Symbol TimeConstant() => board.LookUp(
        "shortest time constant of a stranded wire from 30 AWG up", "τ_w", DutyCycle.ShortestTimeConstant, "s", null, "Its metal alone, in still air: thicker wires stay cooler than this says.");

    private string Free(string name) => name + Mark(name);

    // "" for the first of its name, then 2, 3 …
    private string Mark(string name)
    {
        int count = 1;
        string mark = "";
        while (board.Find(name + mark) is not null)
        {
            mark = (++count).ToString(CultureInfo.InvariantCulture);
        }

        return mark;
    }
}
