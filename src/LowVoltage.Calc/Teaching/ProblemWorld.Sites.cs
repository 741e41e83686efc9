using static LowVoltage.Calc.Teaching.LoadKind;

namespace LowVoltage.Calc.Teaching;

/// <content>What the problems of each world say of it, in the order of <see cref="ProblemSetting"/>.</content>
internal sealed partial record ProblemWorld
{
    private static readonly WorldLoad[] TrailerLoads = [new("trailer lamp set", Lamp, 20, 60), new("loading lamp", Lamp, 10, 30), new("tyre pump", Motor, 80, 140)];

    private static readonly WorldLoad[] TrolleyLoads = [new("inspection lamp", Lamp, 10, 30), new("tyre pump", Motor, 80, 140), new("battery drill charger", Electronics, 40, 90)];

    private static readonly WorldSite[] Sites =
    [
        new("{0} rated {1} is being added to {3}. It gets its own wire and fuse; the fuse box is {2} away (one way).",
            "Behind the lining it reaches", "In the cable duct the wire is", "seat heaters", "The starter battery of {0}",
            new("steel body"), 1500, 60),
        new("On {3}, the wiring to {0} rated {1} has corroded, so both the wire and its fuse are to be replaced. The switch panel is {2} away (one way).",
            "In the engine space it reaches", "Under the deck the wire is", "window heaters", "The engine battery of {0}",
            new("steel frame", "On the road trailer of {0}", TrailerLoads), 1500, 25),
        new("{0} rated {1} is being fitted to {3}, {2} from the cab fuse box (one way).",
            "Beside the engine it reaches", "In the harness the wire is", "mirror heaters", "The starter battery of {0}",
            new("steel frame"), 1500, 100),
        new("For next season, {3} is to get {0} rated {1}. The control desk is {2} away (one way).",
            "Under the tin roof it reaches", "In the buried duct the wire is", "point heaters", "The starter battery of the van that takes {0} to shows",
            new("left-hand rail"), 200, 10),
        new("A circuit for {0} rated {1} is planned in {3}. The battery cupboard is {2} away (one way).",
            "Under the roof it reaches", "In the conduit the wire is", "heated floor mats", "The starter battery of the pick-up that serves {0}",
            new("steel frame", "On the wood trailer of {0}", TrailerLoads), 1500, 60),
        new("On {3}, {0} rated {1} must be rigged before the next show, {2} from the dimmer rack (one way).",
            "Above the lamps it reaches", "In the lighting bar the wire is", "glue-pot heaters", "The starter battery of the lorry that carries the set of {0}",
            new("steel frame", "On the equipment trailer of {0}", TrailerLoads), 600, 100),
        new("In {3}, {0} rated {1} is moving to a new corner and needs a new wire and fuse. The bench supply is {2} away (one way).",
            "Beside the oven it reaches", "In the cable tray the wire is", "hot-glue guns", "The starter battery of the van that belongs to {0}",
            new("steel frame", "On the tool trolley of {0}", TrolleyLoads), 250, 45),
        new("For its next trial, {3} is being given {0} rated {1}, with {2} of cable from the power board (one way).",
            "Under the black lid it reaches", "In the harness the wire is", "lens heaters", "The starter battery of the truck that carries {0}",
            new("metal frame"), 1200, 21),
        new("The owner of {3} wants one more circuit: {0} rated {1}, {2} from the distribution board (one way).",
            "Above the stove it reaches", "Under the floor the wire is", "plate warmers", "The starter battery of the car that pulls {0}",
            new("steel chassis"), 1500, 60),
    ];
}
