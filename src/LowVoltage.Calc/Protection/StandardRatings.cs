namespace LowVoltage.Calc.Protection;

/// <summary>The rated currents of standard series, in A. Data only.</summary>
internal static class StandardRatings
{
    internal static readonly double[] BladeC = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40];

    internal static readonly double[] BladeF = [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30];

    internal static readonly double[] BladeE = [20, 30, 40, 50, 60, 70, 80, 100];

    internal static readonly double[] FemaleContacts = [15, 20, 25, 30, 40, 50, 60];

    internal static readonly double[] BoltInContacts = [30, 40, 50, 60, 80, 100, 120];

    internal static readonly double[] Strip30 = [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200];

    internal static readonly double[] Strip51 = [80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500];

    internal static readonly double[] Glass = [4, 6, 7.5, 9, 14, 20, 30];

    // Body lengths of the glass fuses, mm.
    internal static readonly double[] GlassMillimeters = [15.9, 19.0, 22.2, 22.2, 27.0, 31.7, 36.5];

    internal static readonly double[] Torpedo = [5, 8, 16, 25];

    internal static readonly double[] Iec60127Sheet1 =
        [0.05, 0.063, 0.08, 0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3];

    internal static readonly double[] Iec60127Sheet2 =
    [
        0.032, 0.04, 0.05, 0.063, 0.08, 0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8,
        1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10,
    ];

    internal static readonly double[] Iec60127Sheet3 = Iec60127Sheet2;

    internal static readonly double[] Iec60127Sheet5 = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3];

    // 10 A is new in 2023.
    internal static readonly double[] NationalElectricalCode =
    [
        10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600, 700, 800,
        1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
    ];

    internal static readonly double[] NationalElectricalCodeFusesOnly = [1, 3, 6, 601];

    internal static readonly double[] IndustrialGg =
        [2, 4, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250];
}
