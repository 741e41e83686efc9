namespace LowVoltage.Calc.Teaching;

/// <summary>The invented world that a problem plays in.</summary>
public enum ProblemSetting
{
    /// <summary>A camper van.</summary>
    Van,

    /// <summary>A small boat.</summary>
    Boat,

    /// <summary>A tractor and what it pulls.</summary>
    FarmMachine,

    /// <summary>A model railway.</summary>
    ModelRailway,

    /// <summary>A cabin with solar panels and no mains.</summary>
    OffGridCabin,

    /// <summary>A touring stage with low-voltage lamps.</summary>
    StageLighting,

    /// <summary>A workshop bench with a supply.</summary>
    Workbench,

    /// <summary>A robot that drives itself.</summary>
    Robot,

    /// <summary>A wagon for a travelling kitchen.</summary>
    FoodWagon,
}
