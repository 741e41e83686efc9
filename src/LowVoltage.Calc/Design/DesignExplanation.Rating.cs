using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <content>What each conductor of the path carries for good, and the temperature of the wire in service.</content>
internal sealed partial class DesignExplanation
{
    private readonly Dictionary<Conductor, (Symbol Amperes, Symbol Celsius)> ratings = [];

    private RatingLetters LettersOf(Conductor conductor) => new() { Board = board, Ambient = ambient, Mark = marks.Of(conductor) };

    private bool Ratings()
    {
        bool rated = true;
        Conductor[] conductors = [.. evaluator.Stretches.Select(stretch => stretch.Link.Conductor).Distinct()];
        foreach (Conductor conductor in conductors)
        {
            if (conductors.Length > 1)
            {
                board.Section($"What {conductor} carries for good");
            }

            RatingLetters letters = LettersOf(conductor);
            if (evaluator.Rating.TryAmperes(conductor, out _))
            {
                Symbol amperes = evaluator.Rating.Write(letters, conductor, letters.Named("I_z"));
                double celsius = evaluator.Rating.LimitCelsiusFor(conductor);
                ratings.Add(conductor, (amperes, letters.Rated(letters.Named("θ_z"), celsius, "the rating", evaluator.Rating.ReferenceFor(conductor))));
            }
            else
            {
                rated = false;
                board.State($"current that {conductor} carries for good", evaluator.Rating.Gap.Length > 0 ? Sentence(evaluator.Rating.Gap) : $"{design.Rules.Ampacity.Name} does not rate it here.", evaluator.Rating.Reference);
            }

            if (!ReferenceEquals(conductor, design.Wire))
            {
                // Those of the wire chosen stand among the assumptions.
                board.Note($"Remarks on the rating of {conductor}", [.. evaluator.Rating.Remarks(conductor)]);
            }
        }

        return rated;
    }

    private static string Sentence(string words) => SolutionText.Sentence(words) + ".";

    // The stretch that the check of the continuous current is about: the one with the least margin, the first of equals.
    private void Service()
    {
        if (!duty.Exists || Has(CheckKind.PowerDelivery) || ratings.Count == 0 || heating is null)
        {
            Checks(CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature);
            return;
        }

        (ChainLink Link, double Other, int Place)[] rated = [.. evaluator.Stretches.Select((s, i) => (s.Link, s.OtherAmperes, i)).Where(s => s.Link.IsRated)];
        if (rated.Length > 0)
        {
            (ChainLink link, double other, int place) = rated.OrderBy(s => (s.Link.RatedAmperes - duty.HeatingAmperes - s.Other) / s.Link.RatedAmperes).First();
            Tightest(place, "stretch where the least current is left");
            Value(CheckKind.ContinuousCurrent, Through(heating, other));
            Limit(CheckKind.ContinuousCurrent, Carried(link, place));
        }

        Checks(CheckKind.ContinuousCurrent);
        Hottest(rated);
        Checks(CheckKind.ConductorTemperature);
    }

    private void Hottest((ChainLink Link, double Other, int Place)[] rated)
    {
        if (design.Check(CheckKind.ConductorTemperature) is not { } check)
        {
            return;
        }

        Limit(check.Kind, continuous);
        foreach ((ChainLink link, double other, int place) in rated)
        {
            double each = (duty.HeatingAmperes + other) / link.Parallel;
            if (evaluator.Rating.TryCelsius(link.Conductor, each, link.RatedAmperes / link.Parallel, evaluator.Ambient, out double celsius) && celsius.Equals(check.Value))
            {
                Tightest(place, "stretch where the conductor is hottest");
                Symbol all = Through(heating!, other);
                Symbol one = link.Parallel == 1 ? all : board.Step("r.m.s. current of one of the parallel conductors", "I_1", all / link.Parallel, each, "A", null, "They share it equally.");
                if (evaluator.Rating.WriteCelsius(LettersOf(link.Conductor), link.Conductor, one, ratings[link.Conductor].Amperes, "θ_h") is { } hot)
                {
                    Value(check.Kind, hot);
                }

                return;
            }
        }
    }

    private Symbol Through(Symbol amperes, double other) => other > 0
        ? board.Step("current in the shared return", "I_sh", amperes + board.Find("I_o")!, amperes.Value + other, "A", null, "The other circuits' current heats it too.")
        : amperes;

    // What all the parallel conductors of a stretch carry.
    private Symbol Carried(in ChainLink link, int place)
    {
        Symbol one = ratings[link.Conductor].Amperes;
        return link.Parallel == 1 ? one : board.Step(
            $"current that the {link.Parallel} conductors of {NameOf(place)} carry", "I_zn" + (place + 1), (double)link.Parallel * one, link.RatedAmperes, "A", null, "Side by side they share the current, an equal part each.");
    }

    private void Tightest(int place, string which)
    {
        if (Several)
        {
            board.State(which, Sentence(NameOf(place)));
        }
    }

    private string NameOf(int place)
    {
        ChainLink link = evaluator.Stretches.ElementAt(place).Link;
        string many = link.Parallel == 1 ? "" : $"{link.Parallel} × ";
        return $"the stretch of {Quantities.Accept.Short(link.Meters)} m of {many}{link.Conductor}";
    }
}
