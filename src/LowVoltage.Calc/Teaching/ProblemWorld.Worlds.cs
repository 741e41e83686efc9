using static LowVoltage.Calc.Teaching.LoadKind;

namespace LowVoltage.Calc.Teaching;

/// <content>The worlds. All invented; loads and lengths are what such places usually have (common practice, no published source).</content>
internal sealed partial record ProblemWorld
{
    internal static IReadOnlyList<ProblemWorld> All { get; } =
    [
        new(ProblemSetting.Van, "in", ["a camper van", "an old camper van", "a rented camper van", "a two-berth camper van"], "fuse box", [12, 24], 2, 9,
        [
            new("compressor fridge", Motor, 40, 90), new("roof fan", Motor, 20, 60), new("water pump", Motor, 40, 100),
            new("reading lamp", Lamp, 5, 20), new("awning light", Lamp, 10, 40), new("diesel heater blower", Motor, 30, 120),
            new("seat heater", Heater, 40, 100), new("hot-water boiler", Heater, 120, 240), new("laptop charger", Electronics, 45, 100),
        ]),
        new(ProblemSetting.Boat, "on", ["a small sailing boat", "a wooden sailing boat", "an old sailing boat", "a racing sailing boat"], "switch panel", [12, 24], 3, 14,
        [
            new("bilge pump", Motor, 40, 120), new("masthead lamp", Lamp, 10, 25), new("deck-wash pump", Motor, 60, 150),
            new("cabin heater fan", Motor, 30, 90), new("autopilot drive", Motor, 50, 140), new("chart plotter", Electronics, 15, 45),
            new("radar", Electronics, 40, 90), new("window heater", Heater, 40, 120), new("bunk warmer", Heater, 30, 80),
        ]),
        new(ProblemSetting.FarmMachine, "on", ["a tractor with a seed drill", "a vineyard tractor", "an orchard tractor", "a tractor with a crop sprayer"], "cab fuse box", [12, 24], 4, 12,
        [
            new("work lamp", Lamp, 35, 100), new("beacon", Lamp, 20, 60), new("seed metering motor", Motor, 60, 180),
            new("spray pump", Motor, 90, 220), new("section valve block", Motor, 30, 80), new("mirror heater", Heater, 20, 60),
            new("seat heater", Heater, 40, 100), new("field computer", Electronics, 20, 60), new("crop camera", Electronics, 10, 30),
        ]),
        new(ProblemSetting.ModelRailway, "on", ["a garden model railway", "an indoor model railway", "a narrow-gauge model railway", "a club's model railway"], "control desk", [12, 16, 24], 2, 16,
        [
            new("locomotive", Motor, 8, 40), new("string of station lamps", Lamp, 5, 30), new("turntable motor", Motor, 6, 24),
            new("point motor", Motor, 10, 30), new("signal bridge", Lamp, 4, 16), new("point heater", Heater, 10, 40),
            new("sound module", Electronics, 6, 24), new("track camera", Electronics, 5, 15),
        ]),
        new(ProblemSetting.OffGridCabin, "in", ["an off-grid cabin", "a forest cabin", "a mountain cabin", "a lakeside cabin"], "battery cupboard", [12, 24, 48], 4, 18,
        [
            new("chest fridge", Motor, 50, 120), new("well pump", Motor, 120, 300), new("kitchen light rail", Lamp, 20, 80),
            new("composting-toilet fan", Motor, 3, 12), new("woodshed lamp", Lamp, 30, 90), new("heated floor mat", Heater, 60, 180),
            new("towel warmer", Heater, 40, 120), new("radio router", Electronics, 10, 40), new("television set", Electronics, 30, 80),
        ]),
        new(ProblemSetting.StageLighting, "on", ["a touring puppet stage", "an open-air stage", "a school stage", "a small festival stage"], "dimmer rack", [12, 24, 48], 5, 20,
        [
            new("floodlight", Lamp, 60, 240), new("footlight strip", Lamp, 30, 120), new("effect wheel motor", Motor, 20, 60),
            new("fog fan", Motor, 15, 50), new("curtain winch", Motor, 80, 240), new("fog-fluid heater", Heater, 80, 240),
            new("glue-pot heater", Heater, 40, 120), new("sound mixer", Electronics, 20, 80), new("video projector", Electronics, 60, 180),
        ]),
        new(ProblemSetting.Workbench, "in", ["a small workshop", "a school workshop", "a repair workshop", "a model-maker's workshop"], "bench supply", [12, 24, 36], 2, 8,
        [
            new("fume extractor", Motor, 20, 60), new("small lathe drive", Motor, 80, 240), new("magnifier lamp", Lamp, 8, 24),
            new("soldering iron", Heater, 40, 90), new("hot-glue gun", Heater, 30, 80), new("label printer", Electronics, 30, 90),
            new("measuring computer", Electronics, 30, 90),
        ]),
        new(ProblemSetting.Robot, "on", ["a field robot that counts plants", "a weeding robot", "a warehouse robot", "a greenhouse robot"], "power board", [24, 36, 48], 1, 4,
        [
            new("wheel motor", Motor, 120, 400), new("gripper drive", Motor, 40, 160), new("flash lamp", Lamp, 20, 80),
            new("lens heater", Heater, 10, 40), new("battery warmer", Heater, 40, 120), new("computer", Electronics, 30, 120),
            new("laser scanner", Electronics, 12, 36),
        ]),
        new(ProblemSetting.FoodWagon, "in", ["a travelling soup wagon", "a waffle wagon", "a mobile coffee wagon", "a market food wagon"], "distribution board", [12, 24], 2, 9,
        [
            new("extractor hood", Motor, 60, 180), new("cool drawer", Motor, 60, 150), new("hatch light", Lamp, 10, 40),
            new("tap pump", Motor, 40, 90), new("plate warmer", Heater, 60, 200), new("window heater", Heater, 40, 100),
            new("cash register", Electronics, 15, 45), new("order screen", Electronics, 20, 60),
        ]),
    ];

    internal static ProblemWorld Of(ProblemSetting setting) => All.First(world => world.Setting == setting);
}
