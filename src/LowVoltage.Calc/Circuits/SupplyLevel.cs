namespace LowVoltage.Calc.Circuits;

/// <summary>Where in its range a supply is.</summary>
public enum SupplyLevel
{
    /// <summary>Least voltage behind the greatest resistance: a flat, cold, aged battery.</summary>
    Minimum,

    /// <summary>Nominal voltage behind the nominal resistance.</summary>
    Nominal,

    /// <summary>Greatest voltage behind the least resistance: a new, warm battery on charge.</summary>
    Maximum,
}
