using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public readonly partial struct OhmsLawPoint
{
    private const string Ohm = "Ohm's law: the voltage across a resistance is the current times the resistance.";
    private const string Joule = "Joule's law: power is voltage times current; one of the two is replaced by Ohm's law.";

    private static Reference Source => OhmsLaw.Reference;

    /// <summary>The working of the two numbers that were not given.</summary>
    /// <returns>One step for each.</returns>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new("Ohm's law and power");
        (Symbol first, Symbol second) = Givens(board);
        foreach (OhmsLawQuantity sought in new[] { OhmsLawQuantity.Voltage, OhmsLawQuantity.Current, OhmsLawQuantity.Resistance, OhmsLawQuantity.Power })
        {
            Step(board, sought, first, second);
        }

        return Finish(board);
    }

    /// <summary>The working of one of the numbers.</summary>
    /// <param name="sought">Which one.</param>
    /// <returns>One step; a statement when that number was given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not one of the enumeration.</exception>
    public WorkedSolution Explain(OhmsLawQuantity sought)
    {
        if (sought is not (OhmsLawQuantity.Voltage or OhmsLawQuantity.Current or OhmsLawQuantity.Resistance or OhmsLawQuantity.Power))
        {
            throw new ArgumentOutOfRangeException(nameof(sought), sought, $"sought must be Voltage, Current, Resistance or Power; it was {(int)sought}.");
        }

        SolutionBuilder board = new("Ohm's law and power");
        (Symbol first, Symbol second) = Givens(board);
        Step(board, sought, first, second);
        return Finish(board);
    }

    private static WorkedSolution Finish(SolutionBuilder board)
    {
        if (board.Count == 0)
        {
            board.State("answer", "That number is given; there is nothing to work out.");
        }

        return board.Build();
    }

    private (Symbol First, Symbol Second) Givens(SolutionBuilder board)
    {
        double v = Made(volts), i = amperes, r = ohms, p = watts;
        Symbol voltage() => board.Given("voltage", "V", v, "V");
        Symbol current() => board.Given("current", "I", i, "A");
        Symbol resistance() => board.Given("resistance", "R", r, "Ω");
        Symbol power() => board.Given("power", "P", p, "W");
        return given switch
        {
            OhmsLawPair.VoltageAndCurrent => (voltage(), current()),
            OhmsLawPair.VoltageAndResistance => (voltage(), resistance()),
            OhmsLawPair.VoltageAndPower => (voltage(), power()),
            OhmsLawPair.CurrentAndResistance => (current(), resistance()),
            OhmsLawPair.CurrentAndPower => (current(), power()),
            _ => (resistance(), power()),
        };
    }

    private void Step(SolutionBuilder board, OhmsLawQuantity sought, Symbol a, Symbol b)
    {
        Formula? formula = (given, sought) switch
        {
            (OhmsLawPair.VoltageAndCurrent, OhmsLawQuantity.Resistance) => a / b,
            (OhmsLawPair.VoltageAndCurrent, OhmsLawQuantity.Power) => a * b,
            (OhmsLawPair.VoltageAndResistance, OhmsLawQuantity.Current) => a / b,
            (OhmsLawPair.VoltageAndResistance, OhmsLawQuantity.Power) => Formula.Square(a) / b,
            (OhmsLawPair.VoltageAndPower, OhmsLawQuantity.Current) => b / a,
            (OhmsLawPair.VoltageAndPower, OhmsLawQuantity.Resistance) => Formula.Square(a) / b,
            (OhmsLawPair.CurrentAndResistance, OhmsLawQuantity.Voltage) => a * b,
            (OhmsLawPair.CurrentAndResistance, OhmsLawQuantity.Power) => Formula.Square(a) * b,
            (OhmsLawPair.CurrentAndPower, OhmsLawQuantity.Voltage) => b / a,
            (OhmsLawPair.CurrentAndPower, OhmsLawQuantity.Resistance) => b / Formula.Square(a),
            (OhmsLawPair.ResistanceAndPower, OhmsLawQuantity.Voltage) => Formula.SquareRoot(b * a),
            (OhmsLawPair.ResistanceAndPower, OhmsLawQuantity.Current) => Formula.SquareRoot(b / a),
            _ => null,
        };
        if (formula is null)
        {
            return;
        }

        bool byPower = a.Name == "P" || b.Name == "P" || sought == OhmsLawQuantity.Power;
        string why = byPower ? Joule : Ohm;
        _ = sought switch
        {
            OhmsLawQuantity.Voltage => board.Step("voltage", "V", formula, volts, "V", Source, why),
            OhmsLawQuantity.Current => board.Step("current", "I", formula, amperes, "A", Source, why),
            OhmsLawQuantity.Resistance => board.Step("resistance", "R", formula, ohms, "Ω", Source, why),
            _ => board.Step("power", "P", formula, watts, "W", Source, why),
        };
    }
}
