using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace FleetStudy;

/// <summary>Everything that an answer depends on. Two runs with an equal specification are the same study, and the second goes on where the first was stopped.</summary>
[GenerateSerializer, Immutable, Alias("FleetStudy.StudySpec")]
internal sealed record StudySpec
{
    [Id(0)]
    public required string Study { get; init; }

    /// <summary>How many variants.</summary>
    [Id(1)]
    public required long Variants { get; init; }

    /// <summary>How many variants make a piece of work.</summary>
    [Id(2)]
    public required int PieceSize { get; init; }

    [Id(3)]
    public required long Seed { get; init; }

    /// <summary>How many pieces of each variant are drawn within the tolerances.</summary>
    [Id(4)]
    public int Draws { get; init; }

    /// <summary>Break each variant in every place.</summary>
    [Id(5)]
    public bool Faults { get; init; }

    /// <summary>Where the sheets are written; null for nowhere.</summary>
    [Id(6)]
    public string? PagesFolder { get; init; }

    /// <summary>The build of the library and of this program: results of two builds are never added up.</summary>
    [Id(7)]
    public required string Build { get; init; }

    public int Pieces => (int)((Variants + PieceSize - 1) / PieceSize);

    /// <summary>The build that runs here.</summary>
    public static string ThisBuild { get; } = $"{typeof(LowVoltage.Calc.CircuitDesigner).Module.ModuleVersionId:N}{typeof(StudySpec).Module.ModuleVersionId:N}";

    /// <summary>A name that no other study has.</summary>
    public string Key
    {
        get
        {
            string all = string.Create(CultureInfo.InvariantCulture, $"{Study}|{Variants}|{PieceSize}|{Seed}|{Draws}|{Faults}|{PagesFolder}|{Build}");
            return $"{Study}-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all)))[..16]}";
        }
    }
}
