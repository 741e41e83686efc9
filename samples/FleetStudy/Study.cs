namespace FleetStudy;

/// <summary>What a study asks of each variant. An answer depends on the specification and the number of the variant alone, so that any piece can be done anywhere and again.</summary>
internal abstract class Study
{
    /// <summary>The studies by name.</summary>
    public static IReadOnlyList<Study> All { get; } = [new HarnessStudy(), new SheetStudy()];

    /// <summary>The name on the command line.</summary>
    public abstract string Name { get; }

    /// <summary>How many variants there are.</summary>
    public abstract long Total { get; }

    /// <summary>How many are studied where the command line does not say.</summary>
    public abstract long Usual { get; }

    /// <summary>How many variants make a piece of some tenths of a second.</summary>
    public abstract int UsualPiece { get; }

    /// <summary>The number of the variant at a place in the study: the first thousand places are spread over all the options.</summary>
    public abstract long VariantAt(long place);

    /// <summary>Studies one variant and counts what was found; throws where the variant itself is refused, before anything was counted.</summary>
    public abstract void Count(StudySpec spec, long variant, Tally tally, CancellationToken stop);

    /// <summary>Everything about one variant, for a person.</summary>
    public abstract void Show(StudySpec spec, long variant, TextWriter output);

    /// <summary>Prints what a whole study found.</summary>
    public abstract void Report(StudySpec spec, Tally tally, TextWriter output);

    public static Study Named(string name) => All.Single(s => s.Name == name);
}
