namespace LowVoltage.Calc.Teaching;

/// <content>The worlds. All invented; loads and lengths are what such places usually have (common practice, no published source).</content>
internal sealed partial record ProblemWorld
{
    internal static IReadOnlyList<ProblemWorld> All { get; } =
    [
        new(ProblemSetting.Van, "in", "a camper van", "fuse box", [12, 24], 2, 9,
        [
            new("compressor fridge", 40, 90, 5), new("roof fan", 20, 60, 5), new("water pump", 40, 100, 5),
            new("reading lamp", 5, 20, 1), new("diesel heater blower", 30, 120, 10), new("awning light", 10, 40, 2),
        ]),
        new(ProblemSetting.Boat, "on", "a small sailing boat", "switch panel", [12, 24], 3, 14,
        [
            new("bilge pump", 40, 120, 10), new("masthead lamp", 10, 25, 1), new("chart plotter", 15, 45, 5),
            new("deck-wash pump", 60, 150, 10), new("cabin heater fan", 30, 90, 5), new("autopilot drive", 50, 140, 10),
        ]),
        new(ProblemSetting.FarmMachine, "on", "a tractor with a seed drill", "cab fuse box", [12, 24], 4, 12,
        [
            new("work lamp", 35, 100, 5), new("seed metering motor", 60, 180, 10), new("spray pump", 90, 220, 10),
            new("section valve block", 30, 80, 5), new("beacon", 20, 60, 5), new("hopper camera heater", 10, 40, 2),
        ]),
        new(ProblemSetting.ModelRailway, "on", "a garden model railway", "control desk", [12, 16, 24], 2, 16,
        [
            new("locomotive", 8, 40, 2), new("string of station lamps", 5, 30, 1), new("turntable motor", 6, 24, 2),
            new("point motor bank", 20, 60, 5), new("signal bridge", 4, 16, 1),
        ]),
        new(ProblemSetting.OffGridCabin, "in", "an off-grid cabin", "battery cupboard", [12, 24, 48], 4, 18,
        [
            new("chest fridge", 50, 120, 10), new("well pump", 120, 300, 20), new("kitchen light rail", 20, 80, 5),
            new("router and radio", 10, 40, 5), new("composting-toilet fan", 3, 12, 1), new("workshop lamp", 30, 90, 10),
        ]),
        new(ProblemSetting.StageLighting, "on", "a touring puppet stage", "dimmer rack", [12, 24, 48], 5, 20,
        [
            new("floodlight", 60, 240, 10), new("footlight strip", 30, 120, 10), new("effect wheel motor", 20, 60, 5),
            new("fog fan", 15, 50, 5), new("curtain winch", 80, 240, 10),
        ]),
        new(ProblemSetting.Workbench, "on", "a workshop bench", "bench supply", [12, 24, 36], 2, 8,
        [
            new("soldering iron", 40, 90, 5), new("fume extractor", 20, 60, 5), new("small lathe drive", 80, 240, 20),
            new("magnifier lamp", 8, 24, 2), new("label printer", 30, 90, 10),
        ]),
        new(ProblemSetting.Robot, "on", "a field robot that counts plants", "power board", [24, 36, 48], 2, 7,
        [
            new("wheel motor", 120, 400, 20), new("gripper drive", 40, 160, 10), new("computer", 30, 120, 10),
            new("laser scanner", 12, 36, 2), new("flash lamp", 20, 80, 5),
        ]),
        new(ProblemSetting.FoodWagon, "in", "a travelling soup wagon", "distribution board", [12, 24], 2, 9,
        [
            new("extractor hood", 60, 180, 10), new("cool drawer", 60, 150, 10), new("hatch light", 10, 40, 2),
            new("till and card reader", 15, 45, 5), new("tap pump", 40, 90, 5),
        ]),
    ];

    internal static ProblemWorld Of(ProblemSetting setting) => All.First(world => world.Setting == setting);
}
