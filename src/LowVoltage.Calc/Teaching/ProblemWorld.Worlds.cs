using static LowVoltage.Calc.Teaching.LoadKind;

namespace LowVoltage.Calc.Teaching;

/// <content>The worlds. All invented; loads and lengths are what such places usually have (common practice, no published source).</content>
internal sealed partial record ProblemWorld
{
    internal static IReadOnlyList<ProblemWorld> All { get; } =
    [
        new(ProblemSetting.Van, "in", "a camper van", "fuse box", [12, 24], 2, 9,
        [
            new("compressor fridge", Motor, 40, 90, 5), new("roof fan", Motor, 20, 60, 5), new("water pump", Motor, 40, 100, 5),
            new("reading lamp", Lamp, 5, 20, 1), new("awning light", Lamp, 10, 40, 2), new("diesel heater blower", Motor, 30, 120, 10),
            new("seat heater", Heater, 40, 100, 5), new("hot-water boiler", Heater, 120, 240, 10), new("laptop charger", Electronics, 45, 100, 5),
        ]),
        new(ProblemSetting.Boat, "on", "a small sailing boat", "switch panel", [12, 24], 3, 14,
        [
            new("bilge pump", Motor, 40, 120, 10), new("masthead lamp", Lamp, 10, 25, 1), new("deck-wash pump", Motor, 60, 150, 10),
            new("cabin heater fan", Motor, 30, 90, 5), new("autopilot drive", Motor, 50, 140, 10), new("chart plotter", Electronics, 15, 45, 5),
            new("radar", Electronics, 40, 90, 5), new("window heater", Heater, 40, 120, 10), new("bunk warmer", Heater, 30, 80, 5),
        ]),
        new(ProblemSetting.FarmMachine, "on", "a tractor with a seed drill", "cab fuse box", [12, 24], 4, 12,
        [
            new("work lamp", Lamp, 35, 100, 5), new("beacon", Lamp, 20, 60, 5), new("seed metering motor", Motor, 60, 180, 10),
            new("spray pump", Motor, 90, 220, 10), new("section valve block", Motor, 30, 80, 5), new("mirror heater", Heater, 20, 60, 2),
            new("seat heater", Heater, 40, 100, 5), new("field computer", Electronics, 20, 60, 5), new("crop camera", Electronics, 10, 30, 2),
        ]),
        new(ProblemSetting.ModelRailway, "on", "a garden model railway", "control desk", [12, 16, 24], 2, 16,
        [
            new("locomotive", Motor, 8, 40, 2), new("string of station lamps", Lamp, 5, 30, 1), new("turntable motor", Motor, 6, 24, 2),
            new("point motor", Motor, 10, 30, 2), new("signal bridge", Lamp, 4, 16, 1), new("point heater", Heater, 10, 40, 2),
            new("sound module", Electronics, 6, 24, 2), new("track camera", Electronics, 5, 15, 1),
        ]),
        new(ProblemSetting.OffGridCabin, "in", "an off-grid cabin", "battery cupboard", [12, 24, 48], 4, 18,
        [
            new("chest fridge", Motor, 50, 120, 10), new("well pump", Motor, 120, 300, 20), new("kitchen light rail", Lamp, 20, 80, 5),
            new("composting-toilet fan", Motor, 3, 12, 1), new("woodshed lamp", Lamp, 30, 90, 10), new("heated floor mat", Heater, 60, 180, 10),
            new("towel warmer", Heater, 40, 120, 10), new("radio router", Electronics, 10, 40, 5), new("television set", Electronics, 30, 80, 5),
        ]),
        new(ProblemSetting.StageLighting, "on", "a touring puppet stage", "dimmer rack", [12, 24, 48], 5, 20,
        [
            new("floodlight", Lamp, 60, 240, 10), new("footlight strip", Lamp, 30, 120, 10), new("effect wheel motor", Motor, 20, 60, 5),
            new("fog fan", Motor, 15, 50, 5), new("curtain winch", Motor, 80, 240, 10), new("fog-fluid heater", Heater, 80, 240, 10),
            new("glue-pot heater", Heater, 40, 120, 10), new("sound mixer", Electronics, 20, 80, 5), new("video projector", Electronics, 60, 180, 10),
        ]),
        new(ProblemSetting.Workbench, "in", "a small workshop", "bench supply", [12, 24, 36], 2, 8,
        [
            new("fume extractor", Motor, 20, 60, 5), new("small lathe drive", Motor, 80, 240, 20), new("magnifier lamp", Lamp, 8, 24, 2),
            new("soldering iron", Heater, 40, 90, 5), new("hot-glue gun", Heater, 30, 80, 5), new("label printer", Electronics, 30, 90, 10),
            new("measuring computer", Electronics, 30, 90, 5),
        ]),
        new(ProblemSetting.Robot, "on", "a field robot that counts plants", "power board", [24, 36, 48], 1, 4,
        [
            new("wheel motor", Motor, 120, 400, 20), new("gripper drive", Motor, 40, 160, 10), new("flash lamp", Lamp, 20, 80, 5),
            new("lens heater", Heater, 10, 40, 2), new("battery warmer", Heater, 40, 120, 10), new("computer", Electronics, 30, 120, 10),
            new("laser scanner", Electronics, 12, 36, 2),
        ]),
        new(ProblemSetting.FoodWagon, "in", "a travelling soup wagon", "distribution board", [12, 24], 2, 9,
        [
            new("extractor hood", Motor, 60, 180, 10), new("cool drawer", Motor, 60, 150, 10), new("hatch light", Lamp, 10, 40, 2),
            new("tap pump", Motor, 40, 90, 5), new("plate warmer", Heater, 60, 200, 10), new("window heater", Heater, 40, 100, 5),
            new("cash register", Electronics, 15, 45, 5), new("order screen", Electronics, 20, 60, 5),
        ]),
    ];

    internal static ProblemWorld Of(ProblemSetting setting) => All.First(world => world.Setting == setting);
}
