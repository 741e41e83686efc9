namespace LowVoltage.Calc.References;

/// <summary>Editions of standards that have a successor: which one the values are of, and which is current.</summary>
internal static class Editions
{
    /// <summary>ISO 6722-1, thin-wall and thick-wall road-vehicle cable.</summary>
    internal const string Iso6722 = "2011, superseded by ISO 19642-3";

    /// <summary>ISO 10133, d.c. systems of small craft.</summary>
    internal const string Iso10133 = "2012, withdrawn 2020, superseded by ISO 13297";

    /// <summary>ISO 8820-3, blade fuses.</summary>
    internal const string Iso8820Part3 = "2010; the fourth edition, 2015, was not compared";

    /// <summary>IEC 60364-4-43, protection against overcurrent.</summary>
    internal const string Iec60364Part443 = "2008; restructured in 2023, the clause number is that of 2008";
}
