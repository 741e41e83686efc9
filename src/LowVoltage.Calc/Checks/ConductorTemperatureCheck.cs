using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The temperature of the wire in service.</content>
public abstract partial class CheckKind
{
    /// <summary>Does the conductor stay below the insulation's continuous limit? °C, at most; the stretch nearest to its limit.</summary>
    public static CheckKind ConductorTemperature { get; } = Register(new ConductorTemperatureCheck());
}

internal sealed class ConductorTemperatureCheck()
    : Check(70, nameof(ConductorTemperature), "conductor temperature", "°C", limitIsLeast: false, SheetSection.Service, ("θ_cv", "θ_cl"))
{
    private enum Word : byte
    {
        None,
        Unsettled,
        HotAir,
        NotRated,
    }

    // It says the same as the current on a scale of its own.
    internal override bool Governs => false;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (TryHotAir(at, out int hot))
        {
            InsulationMaterial insulation = at.Stretches[hot].Site.Insulation;
            double air = at.Stretches[hot].Site.AmbientCelsius;
            CheckSubject about = new() { Note = (byte)Word.HotAir, Stretch = at.NameOf(hot) };

            // Air just as hot leaves no room for any current, and two equal numbers would not show it.
            result = air > insulation.ContinuousCelsius
                ? Judged(false, air, insulation.ContinuousCelsius, insulation.Reference, about)
                : InWords(CheckOutcome.Fail, insulation.Reference, about);
            return true;
        }

        if (!at.Duty.Exists)
        {
            return false;
        }

        int hottest = Hottest(at, out double celsius, out bool settled);

        // A stretch that gets too hot fails, whatever is unknown of another.
        if (!at.IsRated && (hottest < 0 || celsius <= at.Stretches[hottest].Site.Insulation.ContinuousCelsius))
        {
            result = Unknown(at.Site.Rating.Reference, CheckSubject.Of((byte)Word.NotRated));
            return true;
        }

        InsulationMaterial its = at.Stretches[hottest].Site.Insulation;
        if (celsius <= its.ContinuousCelsius && TooThin.Find(at) is { } thin)
        {
            result = Unknown(its.Reference, new CheckSubject { About = thin, Stretch = at.NameOf(thin.Stretch) });
            return true;
        }

        result = Judge(
            celsius, its.ContinuousCelsius, its.Reference,
            new CheckSubject { Note = (byte)(settled ? Word.None : Word.Unsettled), Stretch = at.NameOf(hottest), Level = at.Duty.Level });
        return true;
    }

    internal override string Note(in CheckResult result) => (Word)result.NoteKind switch
    {
        Word.Unsettled => "the wire finds no steady temperature at this current; its melting point is shown",
        Word.HotAir => "the air is not cooler than the insulation may be, without any current",
        Word.NotRated => "the wire is not rated here",
        _ => result.About?.ToString() ?? "",
    };

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? result.About is TooThin ? TooThin.Advice : Unrated.Advice
        : "The wire gets too hot: use a cooler place, fewer loaded conductors together, or better insulation.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (!result.HasNumbers)
        {
            return;
        }

        if (TryHotAir(sheet.At, out int hot))
        {
            sheet.Value(this, sheet.AmbientOf(hot));
            sheet.Limit(this, sheet.ContinuousOf(hot));
            return;
        }

        int stretch = Hottest(sheet.At, out double _, out bool settled);
        sheet.Limit(this, sheet.ContinuousOf(stretch));
        if (settled && sheet.Heating is not null && sheet.IsRated(stretch))
        {
            Steps(sheet, stretch);
        }
    }

    private void Steps(Sheet sheet, int stretch)
    {
        SegmentState s = sheet.At.Stretches[stretch];
        sheet.Tell(stretch, "stretch where the conductor is hottest");
        if (s.Stated is not null)
        {
            sheet.Value(this, sheet.Board.LookUp("conductor temperature in service", "θ_h", sheet.Find(this)!.Value.Value!.Value, "°C", null, "As stated for this stretch, or hotter by its rating."));
            return;
        }

        Symbol all = sheet.Through(stretch, sheet.Heating!);
        Symbol one = s.Parallel == 1 ? all : sheet.Board.Step(
            "r.m.s. current of one of the parallel conductors", "I_1", all / s.Parallel, all.Value / s.Parallel, "A", null, "They share it equally.");
        if (s.Site.Rating.WriteCelsius(sheet.LettersOf(stretch), s.Conductor, one, sheet.RatingOf(stretch).Amperes, "θ_h") is { } hot)
        {
            sheet.Value(this, hot);
        }
    }

    private static bool TryHotAir(BranchState at, out int stretch)
    {
        stretch = Array.FindIndex(at.Stretches, s => s.Site.AmbientCelsius >= s.Site.Insulation.ContinuousCelsius);
        return stretch >= 0;
    }

    // The stretch with the least room below its insulation's limit, of those that are rated; −1 where none is.
    private static int Hottest(BranchState at, out double celsius, out bool settled)
    {
        int hottest = -1;
        double least = double.PositiveInfinity;
        celsius = 0;
        settled = true;
        for (int i = 0; i < at.Stretches.Length; i++)
        {
            if (!at.Stretches[i].IsRated)
            {
                continue;
            }

            bool steady = at.TryServiceCelsius(i, out double reached);
            double room = at.Stretches[i].Site.Insulation.ContinuousCelsius - reached;
            if (room < least || hottest < 0)
            {
                (least, hottest, celsius, settled) = (room, i, reached, steady);
            }
        }

        return hottest;
    }
}
