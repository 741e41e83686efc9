namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>Sixty everyday circuits on fuse panels, invented but of the usual kinds: name, kind of load, amperes at 12 V, metres one way, milliohms of supply lead to the panel.</summary>
internal static class Everyday
{
    internal sealed record Row(string Name, string Kind, double Amperes, double Meters, double MilliOhms);

    public static Row[] Rows { get; } = [.. Text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Read)];

    private const string Text = """
        reading lamp; lamp; 0.4; 3; 1
        reading lamp aft; lamp; 0.4; 7; 12
        cabin lights; lamp; 1.7; 5; 2
        cabin lights forward; lamp; 1.7; 9; 15
        LED strip; power; 1; 4; 3
        LED strip, long; power; 2; 6; 12
        anchor light; lamp; 0.8; 14; 5
        navigation lights; lamp; 2.1; 10; 12
        tail lights; lamp; 1.7; 6; 1
        stop lights; lamp; 3.5; 6; 8
        headlamp low beam; lamp; 4.6; 3; 2
        driving lights, LED; power; 8; 3; 12
        work light; lamp; 5; 5; 4
        work lights, LED; power; 6; 6; 20
        beacon; lamp; 4.6; 5; 1
        roof fan; current; 3.2; 4.5; 1
        roof fan, far; current; 3.2; 8; 15
        heater fan; motor; 6; 2; 3
        cabin blower; motor; 12; 3; 12
        bilge blower; motor; 4; 5; 2
        bilge pump; motor; 3; 6; 6
        bilge pump, large; motor; 8; 5; 12
        water pump; motor; 5; 4; 1
        shower pump; motor; 3; 7; 20
        washdown pump; motor; 10; 4; 12
        fuel pump; motor; 5; 5; 2
        fuel transfer pump; motor; 8; 3; 15
        wiper; motor; 4; 3; 3
        wipers, two; motor; 8; 3; 12
        horn; current; 5; 3; 1
        horns, two; current; 10; 4; 12
        cooler; power; 4.5; 5.5; 2
        cooler, far; power; 4.5; 8; 12
        cooler chest; power; 6; 3; 6
        refrigerator; power; 5; 6; 15
        freezer; power; 7; 5; 12
        radio; power; 1.2; 3; 1
        car radio; power; 5; 2; 4
        amplifier; power; 15; 3; 12
        two-way radio; power; 6; 4; 2
        two-way radio, high power; power; 18; 3; 12
        depth sounder; power; 0.5; 8; 1
        chart plotter; power; 1.5; 6; 10
        autopilot; motor; 5; 7; 12
        alarm; current; 0.3; 4; 1
        bus logger; current; 0.3; 2; 20
        gas detector; current; 0.3; 5; 5
        camera; power; 0.6; 9; 2
        router; power; 1; 3; 1
        charger for telephones; power; 2; 2; 3
        charging socket; current; 8; 3; 12
        socket; current; 10; 4; 15
        laptop supply; power; 7; 3; 12
        seat heater; resistance; 5; 3; 1
        seat heaters, two; resistance; 10; 3; 12
        rear-window heater; resistance; 9; 5; 20
        diesel heater; power; 3; 4; 2
        diesel heater glow plug; resistance; 10; 3; 12
        toilet pump; motor; 10; 5; 15
        winch control; current; 2; 6; 1
        """;

    private static Row Read(string line)
    {
        string[] parts = line.Split(';', StringSplitOptions.TrimEntries);
        return new Row(parts[0], parts[1], Number(parts[2]), Number(parts[3]), Number(parts[4]));
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
