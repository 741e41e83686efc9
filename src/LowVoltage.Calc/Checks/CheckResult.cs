using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Checks;

/// <summary>One check of a design: what was found, what is allowed, by how much it passes or fails, and on whose authority.</summary>
/// <remarks>Values and limits are plain numbers because each kind has its own unit; <see cref="Unit"/> names it.</remarks>
public readonly struct CheckResult : IEquatable<CheckResult>
{
    // Bytes and parts instead of enumerations and text: a design holds a dozen of these.
    private readonly byte kind;
    private readonly byte outcome;
    private readonly NoteKind noteKind;
    private readonly double noteNumber;
    private readonly object? noteSubject;

    internal CheckResult(CheckKind kind, double value, double limit, Reference reference, in CheckNote note = default)
        : this(kind, value, limit, Passes(kind, value, limit) ? CheckOutcome.Pass : CheckOutcome.Fail, reference, note)
    {
    }

    private CheckResult(CheckKind kind, double value, double limit, CheckOutcome outcome, Reference reference, in CheckNote note)
    {
        this.kind = (byte)kind;
        this.outcome = (byte)outcome;
        Value = value;
        Limit = limit;
        Reference = reference;
        noteKind = note.Kind;
        noteNumber = note.Number;
        noteSubject = note.Subject;
    }

    /// <summary>What was asked.</summary>
    public CheckKind Kind => (CheckKind)kind;

    /// <summary>Pass, fail, or open.</summary>
    public CheckOutcome Outcome => (CheckOutcome)outcome;

    /// <summary>What the circuit has, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>What is allowed, in <see cref="Unit"/>; zero when the check is open.</summary>
    public double Limit { get; }

    /// <summary>Whose rule the limit is.</summary>
    public Reference Reference { get; }

    /// <summary>How the value or limit came about, or what is missing; may be empty.</summary>
    public string Note => new CheckNote(noteKind, noteSubject, noteNumber).Write(Value);

    /// <summary>The unit of value and limit.</summary>
    public string Unit => Kind switch
    {
        CheckKind.PowerDelivery => "W",
        CheckKind.VoltageDrop or CheckKind.LoadVoltage or CheckKind.StartVoltage or CheckKind.FuseVoltage => "V",
        CheckKind.MechanicalMinimum => "mm²",
        CheckKind.ConductorTemperature or CheckKind.OverloadTemperature or CheckKind.ShortCircuitTemperature => "°C",
        CheckKind.InrushHeld or CheckKind.FaultOpensFuse => "s",
        CheckKind.FuseDistance => "m",
        _ => "A",
    };

    /// <summary>Whether the limit is the least allowed; otherwise it is the most allowed.</summary>
    public bool LimitIsLeast => IsLeast(Kind);

    /// <summary>Share of the limit that is left: 0.25 means a quarter to spare, negative means beyond the limit, −1 beyond a limit of zero or where the fuse never opens; zero when the check is open.</summary>
    public double Margin =>
        Outcome == CheckOutcome.Undetermined ? 0
        : IsNever || (Limit == 0 && Outcome == CheckOutcome.Fail) ? -1
        : Limit == 0 ? 0
        : (LimitIsLeast ? Value - Limit : Limit - Value) / Math.Abs(Limit);

    // A time that never comes: it failed although its number, zero, is within the limit.
    private bool IsNever => Outcome == CheckOutcome.Fail && Value == 0 && (Passes(Kind, Value, Limit) || Kind == CheckKind.StartVoltage);

    /// <summary>The margin in words: <c>Margin 9.1 %</c>; kelvins for a temperature, plain words beyond ten times the limit.</summary>
    internal string MarginText
    {
        get
        {
            bool pass = Outcome == CheckOutcome.Pass;
            double room = Unit == "°C" ? Math.Abs(Limit - Value) : 100 * Math.Abs(Margin);
            return room > 1000 && Unit != "°C"
                ? LimitIsLeast ? "More than ten times what is needed" : "More than ten times what is allowed"
                : $"{(pass ? "Margin" : "Beyond the limit by")} {Three(room)} {(Unit == "°C" ? "K" : "%")}";
        }
    }

    /// <summary>The check's name in plain words: <c>voltage drop</c>.</summary>
    public string Name => NameOf(Kind);

    /// <inheritdoc/>
    public bool Equals(CheckResult other) =>
        Kind == other.Kind && Outcome == other.Outcome && Value.Equals(other.Value) && Limit.Equals(other.Limit)
        && Equals(Reference, other.Reference) && Note == other.Note;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CheckResult other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (Kind, Value, Limit).GetHashCode();

    /// <summary>Whether two checks are the same.</summary>
    public static bool operator ==(CheckResult left, CheckResult right) => left.Equals(right);

    /// <summary>Whether two checks differ.</summary>
    public static bool operator !=(CheckResult left, CheckResult right) => !left.Equals(right);

    /// <summary>The check in one line: <c>voltage drop 0.29 V, at most 0.36 V: pass</c>.</summary>
    public override string ToString()
    {
        if (Outcome == CheckOutcome.Undetermined)
        {
            return $"{Name}: undetermined, {Note}";
        }

        if (IsNever)
        {
            return $"{Name}: fail, {Note}";
        }

        if (noteKind == NoteKind.SupplyIsWeak)
        {
            return $"{Name}: pass, nothing has to open, {Note}";
        }

        string bound = LimitIsLeast ? "at least" : "at most";
        return $"{Name} {Accept.Short(Value)} {Unit}, {bound} {Accept.Short(Limit)} {Unit}: {(Outcome == CheckOutcome.Pass ? "pass" : "fail")}";
    }

    /// <summary>Whether this check has less to spare. The temperature says the same as the current on a scale of its own, so it decides only among its like.</summary>
    internal bool IsTighterThan(in CheckResult other)
    {
        bool temperature = Kind == CheckKind.ConductorTemperature, otherTemperature = other.Kind == CheckKind.ConductorTemperature;
        return temperature == otherTemperature ? Margin < other.Margin : otherTemperature;
    }

    internal static CheckResult Undetermined(CheckKind kind, double value, Reference reference, in CheckNote missing) =>
        new(kind, value, 0, CheckOutcome.Undetermined, reference, missing);

    /// <summary>A check that was judged on other numbers than the two it shows.</summary>
    internal static CheckResult Judged(CheckKind kind, double value, double limit, bool passes, Reference reference, in CheckNote note) =>
        new(kind, value, limit, passes ? CheckOutcome.Pass : CheckOutcome.Fail, reference, note);

    /// <summary>A failure whose value has no number: the fuse that need never open.</summary>
    internal static CheckResult Never(CheckKind kind, double limit, Reference reference, in CheckNote note) =>
        new(kind, 0, limit, CheckOutcome.Fail, reference, note);

    private static string Three(double value) => value is > 0 and < 0.01 ? "under 0.01" : value >= 999.5
        ? value.ToString("0", System.Globalization.CultureInfo.InvariantCulture)
        : value.ToString("G3", System.Globalization.CultureInfo.InvariantCulture);

    internal static string NameOf(CheckKind kind) => kind switch
    {
        CheckKind.PowerDelivery => "power delivery",
        CheckKind.MechanicalMinimum => "mechanical minimum",
        CheckKind.VoltageDrop => "voltage drop",
        CheckKind.LoadVoltage => "voltage at the load",
        CheckKind.StartVoltage => "voltage at the load while it starts",
        CheckKind.ContinuousCurrent => "continuous current",
        CheckKind.ConductorTemperature => "conductor temperature",
        CheckKind.FuseCarriesLoad => "fuse carries the load",
        CheckKind.FuseProtectsWire => "fuse protects the wire",
        CheckKind.FuseVoltage => "fuse voltage rating",
        CheckKind.BreakingCapacity => "breaking capacity",
        CheckKind.InrushHeld => "fuse holds at start",
        CheckKind.OverloadTemperature => "overload temperature",
        CheckKind.FaultOpensFuse => "fault at the far end opens the fuse",
        CheckKind.ShortCircuitTemperature => "short-circuit temperature",
        _ => "distance of the fuse from the source",
    };

    internal static bool Passes(CheckKind kind, double value, double limit) => IsLeast(kind) ? value >= limit : value <= limit;

    private static bool IsLeast(CheckKind kind) =>
        kind is CheckKind.MechanicalMinimum or CheckKind.LoadVoltage or CheckKind.StartVoltage or CheckKind.FuseCarriesLoad or CheckKind.FuseVoltage or CheckKind.PowerDelivery;
}
