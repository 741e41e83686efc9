using LowVoltage.Calc;
using LowVoltage.Calc.Working;

namespace CircuitSchedule;

/// <summary>What the command line asks for.</summary>
internal sealed record Options
{
    /// <summary>How many circuits each list below the table names, when the command line does not say.</summary>
    public const int UsualList = 100;

    public static string ShippedScenario { get; } = Path.Combine(AppContext.BaseDirectory, "scenario.csv");

    public string InputPath { get; init; } = ShippedScenario;

    public string? CsvPath { get; init; }

    public string? HtmlPath { get; init; }

    /// <summary>The folder that takes a calculation sheet for each circuit.</summary>
    public string? SheetFolder { get; init; }

    /// <summary>The date on the sheets, as it is to be read; empty leaves a line to fill in.</summary>
    public string Date { get; init; } = "";

    public SheetPaper Paper { get; init; } = SheetPaper.Any;

    /// <summary>Columns of the printed schedule; null for those of the terminal.</summary>
    public int? Width { get; init; }

    /// <summary>The rules for rows that name no practice.</summary>
    public DesignRules Practice { get; init; } = DesignRules.RoadVehicle;

    /// <summary>The decimal sign; null to find it in the file.</summary>
    public DecimalSign? Decimals { get; init; }

    public int List { get; init; } = UsualList;

    public bool IsShippedScenario => InputPath == ShippedScenario;
}
