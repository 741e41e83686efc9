using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>What each conductor of the path carries continuously where it runs.</content>
internal sealed partial class Sheet
{
    private readonly Dictionary<int, (Symbol Amperes, Symbol Celsius)> ratings = [];

    internal bool IsRated(int stretch) => ratings.ContainsKey(stretch);

    internal (Symbol Amperes, Symbol Celsius) RatingOf(int stretch) => ratings[stretch];

    internal RatingLetters LettersOf(int stretch) => new() { Board = Board, Ambient = AmbientOf(stretch), Limit = ContinuousOf(stretch), Mark = MarkOf(stretch) };

    /// <summary>What tells the letters of a stretch from others': the conductor's mark, and the place's where several differ.</summary>
    internal string MarkOf(int stretch)
    {
        ref readonly SegmentState s = ref At.Stretches[stretch];
        string conductor = Marks.Of(s.Conductor);
        return ReferenceEquals(s.Site, At.Site) ? conductor : conductor + "p" + Text(FirstAlike(stretch));
    }

    /// <summary>Writes the rating of every conductor in every place.</summary>
    /// <param name="chosen">The wire of a design, whose remarks stand among the assumptions.</param>
    /// <param name="basis">What the rules rate by.</param>
    /// <returns>Whether all are rated.</returns>
    internal bool WriteRatings(Conductor? chosen, AmpacityBasis basis)
    {
        bool rated = true;
        int different = Enumerable.Range(0, At.Stretches.Length).Count(i => FirstAlike(i) == i);
        for (int i = 0; i < At.Stretches.Length; i++)
        {
            int first = FirstAlike(i);
            if (first < i)
            {
                if (ratings.TryGetValue(first, out (Symbol, Symbol) known))
                {
                    ratings.Add(i, known);
                }
            }
            else
            {
                rated &= WriteRating(i, different > 1, chosen, basis);
            }
        }

        return rated;
    }

    private bool WriteRating(int stretch, bool several, Conductor? chosen, AmpacityBasis basis)
    {
        SegmentState s = At.Stretches[stretch];
        PreparedRating rating = s.Site.Rating;
        if (several)
        {
            Board.Section($"What {s.Conductor}{(ReferenceEquals(s.Site, At.Site) ? "" : $" in {s.Site.Place}")} carries continuously");
        }

        bool rated = rating.TryAmperes(s.Conductor, out _);
        if (rated)
        {
            RatingLetters letters = LettersOf(stretch);
            Symbol amperes = rating.Write(letters, s.Conductor, letters.Named("I_z"));
            ratings.Add(stretch, (amperes, letters.Rated(letters.Named("θ_z"), rating.LimitCelsiusFor(s.Conductor), "the rating", rating.ReferenceFor(s.Conductor))));
        }
        else
        {
            Board.State(
                $"current that {s.Conductor} carries continuously",
                rating.Gap.Exists ? SolutionText.Sentence(rating.Gap.ToString()) + "." : $"{basis.Name} does not rate it here.",
                rating.Reference);
        }

        if (!s.Conductor.Equals(chosen) || !ReferenceEquals(s.Site, At.Site))
        {
            Board.Note($"Remarks on the rating of {s.Conductor}", [.. rating.Remarks(s.Conductor)]);
        }

        return rated;
    }

    /// <summary>What all the parallel conductors of a stretch carry.</summary>
    internal Symbol Carried(int stretch)
    {
        ref readonly SegmentState s = ref At.Stretches[stretch];
        return Together(stretch, ratings[stretch].Amperes, s.RatedAmperes, "I_zn" + Text(stretch), $"current that the {s.Parallel} conductors of {LongName(stretch)} carry");
    }

    /// <summary>What the others leave of a stretch's continuous current.</summary>
    internal Symbol Left(int stretch) => Rest(stretch, Carried(stretch), At.Stretches[stretch].LeftAmperes, "I_left");

    /// <summary>The rating by the basis that cools a stretch least: what an overload is counted with.</summary>
    internal CoolingSymbols Cooling(int stretch)
    {
        SegmentState s = At.Stretches[stretch];
        RatingLetters letters = LettersOf(stretch);
        (double left, PreparedRating basis) = s.Cooling();
        Symbol ambient = letters.AmbientOfRating("θ_za" + letters.Mark, basis.RatedAmbientFor(s.Conductor), basis.ReferenceFor(s.Conductor));
        if (s.Site.Rating is not LowerPrepared both || !both.TryAmperes(s.Conductor, out double least) || !basis.TryAmperes(s.Conductor, out double one) || one.Equals(least))
        {
            return new CoolingSymbols(Left(stretch), ratings[stretch].Celsius, ambient);
        }

        Symbol rated = both.SymbolOf(basis, letters)!;
        Board.State("cooling that an overload is counted with", $"That of {rated.Name}: a larger current, but in air of {Accept.Short(basis.RatedAmbientFor(s.Conductor))} °C it stands for less cooling than {ratings[stretch].Amperes.Name} does.", basis.ReferenceFor(s.Conductor));
        Symbol all = Together(stretch, rated, one * s.Parallel, "I_zc" + Text(stretch), $"current that the {s.Parallel} conductors of {LongName(stretch)} carry by that");
        return new CoolingSymbols(Rest(stretch, all, left, "I_lefc"), letters.Rated(letters.Named("θ_zc"), basis.LimitCelsiusFor(s.Conductor), "that rating", basis.ReferenceFor(s.Conductor)), ambient);
    }

    private Symbol Together(int stretch, Symbol one, double all, string name, string sought)
    {
        int n = At.Stretches[stretch].Parallel;
        return n == 1 ? one : Board.Step(sought, name, (double)n * one, all, "A", null, "Side by side they share the current, an equal part each.");
    }

    private Symbol Rest(int stretch, Symbol all, double left, string name) => At.Stretches[stretch].OtherAmperes > 0
        ? Board.Step($"what the other circuits leave of {LongName(stretch)}", name, Formula.Greatest(all - Board.Find("I_o")!, 0), left, "A", null)
        : all;

    /// <summary>All the current that heats a stretch.</summary>
    internal Symbol Through(int stretch, Symbol amperes)
    {
        double other = At.Stretches[stretch].OtherAmperes;
        return other > 0
            ? Board.Step("current in the shared return", "I_sh", amperes + Board.Find("I_o")!, amperes.Value + other, "A", null, "The other circuits' current heats it too.")
            : amperes;
    }

    // The first stretch of the same conductor in the same place.
    private int FirstAlike(int stretch)
    {
        for (int i = 0; i < stretch; i++)
        {
            if (At.Stretches[i].Conductor.Equals(At.Stretches[stretch].Conductor) && ReferenceEquals(At.Stretches[i].Site, At.Stretches[stretch].Site))
            {
                return i;
            }
        }

        return stretch;
    }
}
