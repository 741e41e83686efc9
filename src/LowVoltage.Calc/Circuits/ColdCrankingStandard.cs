namespace LowVoltage.Calc.Circuits;

/// <summary>The test behind a cold-cranking current. Ratings of different tests are not interchangeable.</summary>
public enum ColdCrankingStandard
{
    /// <summary>SAE J537: −18 °C (0 °F), 30 s, at least 7.2 V.</summary>
    SaeJ537,

    /// <summary>EN 50342-1: −18 °C, 10 s, at least 7.5 V.</summary>
    En50342,

    /// <summary>The former DIN 43539-2: −18 °C, 30 s, at least 9.0 V.</summary>
    Din43539,

    /// <summary>The former IEC 95-1: −18 °C, 60 s, at least 8.4 V.</summary>
    Iec95,

    /// <summary>Cranking or marine cranking current: 0 °C (32 °F), 30 s, at least 7.2 V.</summary>
    MarineCranking,
}
