using static LowVoltage.Calc.Teaching.LoadKind;

namespace LowVoltage.Calc.Teaching;

/// <content>What the problems of each world say of it, in the order of <see cref="ProblemSetting"/>.</content>
internal sealed partial record ProblemWorld
{
    private static readonly WorldLoad[] TrailerLoads = [new("trailer lamp set", Lamp, 20, 60, 5), new("loading lamp", Lamp, 10, 30, 2), new("tyre pump", Motor, 80, 140, 10)];

    private static readonly WorldLoad[] TrolleyLoads = [new("inspection lamp", Lamp, 10, 30, 2), new("tyre pump", Motor, 80, 140, 10), new("battery drill charger", Electronics, 40, 90, 5)];

    private static readonly WorldSite[] Sites =
    [
        new("In a camper van, {0} of {1} gets a wire and a fuse of its own, {2} from the fuse box (one way).",
            "Behind the lining it is", "In the cable duct the wire is", "seat heaters", "The starter battery of a camper van",
            new("steel body"), 1500, 60),
        new("On a small sailing boat, the wire of {0} of {1} has corroded; wire and fuse are to be renewed. The switch panel is {2} away (one way).",
            "In the engine space it is", "Under the deck the wire is", "window heaters", "The engine battery of a small sailing boat",
            new("steel frame", "On the road trailer of a small sailing boat", TrailerLoads), 1500, 25),
        new("A tractor with a seed drill is to get {0} of {1}, {2} from the cab fuse box (one way).",
            "Beside the engine it is", "In the harness the wire is", "mirror heaters", "The starter battery of a tractor with a seed drill",
            new("steel frame"), 1500, 100),
        new("For the next season, a garden model railway gets {0} of {1}. The control desk stands {2} away (one way).",
            "Under the tin roof it is", "In the buried duct the wire is", "point heaters", "The starter battery of the van that takes a garden model railway to shows",
            new("left-hand rail"), 200, 10),
        new("In an off-grid cabin, a circuit for {0} of {1} is planned. The battery cupboard is {2} away (one way).",
            "Under the roof it is", "In the conduit the wire is", "heated floor mats", "The starter battery of the pick-up that serves an off-grid cabin",
            new("steel frame", "On the wood trailer of an off-grid cabin", TrailerLoads), 1500, 60),
        new("On a touring puppet stage, {0} of {1} must be rigged before the next show, {2} from the dimmer rack (one way).",
            "Above the lamps it is", "In the lighting bar the wire is", "glue-pot heaters", "The starter battery of the lorry of a touring puppet stage",
            new("steel frame", "On the equipment trailer of a touring puppet stage", TrailerLoads), 600, 100),
        new("In a small workshop, {0} of {1} moves to a new corner and needs a new wire and fuse. The bench supply is {2} away (one way).",
            "Beside the oven it is", "In the cable tray the wire is", "hot-glue guns", "The starter battery of the van of a small workshop",
            new("steel frame", "On the tool trolley of a small workshop", TrolleyLoads), 250, 45),
        new("A field robot that counts plants gets {0} of {1} for its next trial, {2} of wiring from the power board (one way).",
            "Under its black lid it is", "In the harness the wire is", "lens heaters", "The starter battery of the truck that carries a field robot that counts plants",
            new("metal frame"), 1200, 21),
        new("The owner of a travelling soup wagon asks for the plan of one more circuit: {0} of {1}, {2} from the distribution board (one way).",
            "Above the stove it is", "Under the floor the wire is", "plate warmers", "The starter battery of the car that pulls a travelling soup wagon",
            new("steel chassis"), 1500, 60),
    ];
}
