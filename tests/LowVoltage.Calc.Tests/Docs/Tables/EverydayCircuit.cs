using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Tables;

/// <summary>An invented circuit of the usual kind, what the handbooks carried give for it, and what the designer gives.</summary>
internal sealed class EverydayCircuit
{
    public required string Name { get; init; }

    /// <summary>The current that a handbook reckons with: rated, or power over nominal volts.</summary>
    public required double Amperes { get; init; }

    public required CircuitRequirements Requirements { get; init; }

    public required DesignRules Rules { get; init; }

    public required Handbook Book { get; init; }

    /// <summary>Why the two differ, or that they agree, in one sentence; it was written for the wires named next, and a test holds both.</summary>
    public required string Why { get; init; }

    /// <summary>The handbook's wire and the designer's.</summary>
    public required (string Book, string Design) Wires { get; init; }

    /// <summary>The same circuit without what the sentence names, and the wire that the designer then takes: it must be nearer to the book's.</summary>
    public (CircuitRequirements Requirements, DesignRules Rules, string Wire)? Without { get; init; }

    public CircuitDesign Design() => CircuitDesigner.Design(Requirements, Rules);

    /// <summary>A fuse for 125 % of the current; the first size that the table lets carry that fuse and whose drop by the book's formula stays within the allowance.</summary>
    public (Conductor Wire, ElectricCurrent Fuse, string Decides) ByTheBook()
    {
        ElectricCurrent fuse = Rules.Fuses.SmallestAtLeast(FuseLoading.LeastRatingFor(ElectricCurrent.FromAmperes(Amperes), 0.8)).Current;
        Conductor byTable = Rules.Conductors.Conductors.First(wire => Book.Amperes(wire, Requirements) >= fuse.Amperes);
        Conductor byDrop = Rules.Conductors.Conductors.First(wire => Book.Drop(wire, Requirements, Amperes) <= Book.AllowedVolts(Requirements));
        return byTable.Area > byDrop.Area ? (byTable, fuse, "table") : (byDrop, fuse, "drop");
    }

    /// <summary>Sizes of the series from the book's wire up to another.</summary>
    public int StepsTo(string wire)
    {
        int Place(string size) => Rules.Conductors.Conductors.Select((conductor, at) => (Size: conductor.Size!.Value.ToString(), At: at)).Single(item => item.Size == size).At;
        return Place(wire) - Place(Wires.Book);
    }
}

/// <summary>A handbook way to a wire: a table of currents and a formula for the drop, written out here apart from the library's own design.</summary>
internal abstract class Handbook
{
    public abstract string Name { get; }

    /// <summary>What the table lets a size carry where the circuit runs, A; 0 where it has no such size.</summary>
    public abstract double Amperes(Conductor wire, CircuitRequirements circuit);

    /// <summary>The drop by the book's own formula, V.</summary>
    public abstract double Drop(Conductor wire, CircuitRequirements circuit, double amperes);

    /// <summary>The allowance of the circuit, else 3 % of the nominal voltage, unless the book says otherwise.</summary>
    public virtual double AllowedVolts(CircuitRequirements circuit) =>
        circuit.DropLimit is { } stated && stated.TryFor(circuit.Source.NominalVoltage, false, out ElectricPotential drop) ? drop.Volts : 0.03 * circuit.Source.NominalVoltage.Volts;

    protected static double Meters(CircuitRequirements circuit) => circuit.Feed.Meters * (circuit.Return.Kind == Calc.Circuits.ReturnKind.Chassis ? 1 : 2);

    protected static double Rating(AmpacityTable table, Conductor wire, CircuitRequirements circuit) =>
        wire.Size is { } size && table.TryRating(size, circuit.Insulation.ContinuousLimit, out TableRating? rating) ? rating.Current.Amperes : 0;
}

/// <summary>The single-core table of road-vehicle handbooks, its column of 30 °C or 50 °C, and S = I·ρ·L/ΔV with ρ = 0.0185 Ω·mm²/m (from memory) and the nominal section.</summary>
internal sealed class RoadVehicleHandbook : Handbook
{
    public override string Name => "road-vehicle handbook table, one cable";

    public override double Amperes(Conductor wire, CircuitRequirements circuit) =>
        Rating(circuit.Place.Ambient.DegreesCelsius > 30 ? RoadVehicleSingleCore.Ambient50 : RoadVehicleSingleCore.Ambient30, wire, circuit);

    public override double Drop(Conductor wire, CircuitRequirements circuit, double amperes) =>
        amperes * 0.0185 * Meters(circuit) / wire.Size!.Value.NominalArea.SquareMillimeters;
}

/// <summary>33 CFR 183.425 Table 5 with note 1 for warm places, and CM = K·I·L/E with K = 10.75 and L in feet out and back (ABYC E-11, from memory).</summary>
internal sealed class SmallCraftHandbook : Handbook
{
    public override string Name => "33 CFR 183.425 Table 5";

    public override double Amperes(Conductor wire, CircuitRequirements circuit)
    {
        Temperature rating = circuit.Insulation.ContinuousLimit;
        double warmth = circuit.Place.Ambient.DegreesCelsius > 30 ? Cfr33Part183EngineSpace.Factor(rating).Value : 1;
        return Rating(Cfr33Part183Table5.Table, wire, circuit) * warmth;
    }

    public override double Drop(Conductor wire, CircuitRequirements circuit, double amperes) =>
        10.75 * amperes * Meters(circuit) / 0.3048 / CircularMil.FromArea(wire.Size!.Value.NominalArea);
}

/// <summary>FAA AC 43.13-1B: Table 11-9 for the current, its largest resistance at 20 °C and Table 11-6 for the drop.</summary>
internal sealed class AircraftHandbook : Handbook
{
    public override string Name => "FAA AC 43.13-1B Tables 11-9 and 11-6";

    public override double Amperes(Conductor wire, CircuitRequirements circuit) => Rating(FaaAc43Table11Dash9.Table, wire, circuit);

    public override double Drop(Conductor wire, CircuitRequirements circuit, double amperes) =>
        amperes * Meters(circuit) * wire.ResistancePerLength(Temperature.FromDegreesCelsius(20)).OhmsPerMeter;

    public override double AllowedVolts(CircuitRequirements circuit) => circuit.Source.NominalVoltage.Volts > 20 ? 1 : 0.5;
}

/// <summary>IEC 60364-5-52: method C of Table B.52.4 with its ambient factor, and the drop with ρ = 0.0225 Ω·mm²/m of its annex G (from memory).</summary>
internal sealed class BuildingHandbook : Handbook
{
    public override string Name => "IEC 60364-5-52 method C";

    public override double Amperes(Conductor wire, CircuitRequirements circuit) =>
        Rating(Iec60364MethodC.Table, wire, circuit) * Math.Min(1, Iec60364Ambient.Factor(circuit.Place.Ambient, circuit.Insulation.ContinuousLimit).Value);

    public override double Drop(Conductor wire, CircuitRequirements circuit, double amperes) =>
        amperes * 0.0225 * Meters(circuit) / wire.Size!.Value.NominalArea.SquareMillimeters;
}
