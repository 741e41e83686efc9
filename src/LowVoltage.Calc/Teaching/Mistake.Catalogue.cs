namespace LowVoltage.Calc.Teaching;

/// <content>The mistakes.</content>
public sealed partial class Mistake
{
    private static readonly List<Mistake> Entries = [];

    /// <summary>Every mistake that problems and grading know.</summary>
    public static IReadOnlyList<Mistake> All => Entries.AsReadOnly();

    internal static Mistake OneWayTakenForLoop { get; } = New("one way taken for the loop",
        "The distance is one way only, but the current runs out and back: the length of conductor is twice the distance.");

    internal static Mistake ReturnForgotten { get; } = New("way back forgotten",
        "Only the way out was counted; the same current also passes the way back, and its resistance belongs to the path.");

    internal static Mistake LoopDoubled { get; } = New("doubled once too often",
        "What is given is for the whole conductor already, out and back; it must not be doubled again.");

    internal static Mistake ReturnTakenAsWire { get; } = New("chassis taken for a second wire",
        "The way back is the chassis with its own resistance, not a second wire like the one that leads out.");

    internal static Mistake FeedForgotten { get; } = New("wire forgotten",
        "Only the way back was counted; the wire that leads out has a resistance too.");

    internal static Mistake DiameterForArea { get; } = New("diameter for area",
        "The diameter stands where the area belongs. The area of a round wire is π·d²/4.");

    internal static Mistake AreaForDiameter { get; } = New("area taken for a diameter",
        "The number given is an area already; there is no π·d²/4 to take of it.");

    internal static Mistake RadiusForDiameter { get; } = New("diameter used as a radius",
        "π·r² takes the radius, half the diameter; with the diameter it is π·d²/4.");

    internal static Mistake PiForgotten { get; } = New("π/4 forgotten",
        "d² alone is the area of a square; a round wire has π/4 of it.");

    internal static Mistake PiAdded { get; } = New("π/4 where none belongs",
        "A circular mil is the area of a circle one mil across, so circular mils are d² in mils, without π/4.");

    internal static Mistake DiameterNotSquared { get; } = New("diameter not squared",
        "An area grows with the square of the diameter.");

    internal static Mistake StrandsForgotten { get; } = New("one strand only",
        "The section of a stranded wire is that of one strand times their number.");

    internal static Mistake StrandsSquared { get; } = New("number of strands squared",
        "The number of strands multiplies the area once; only the diameter is squared.");

    internal static Mistake WattsForAmperes { get; } = New("watts for amperes",
        "The power was used where a current belongs. First divide it by the voltage: I = P/U.");

    internal static Mistake ColdForHot { get; } = New("resistance at 20 °C where another temperature is asked",
        "The resistance stated for 20 °C was used unchanged; it must first be taken to the temperature asked for.");

    internal static Mistake TemperatureSign { get; } = New("sign of the temperature term",
        "The temperature term was taken with the wrong sign: a metal's resistance rises with temperature.");

    internal static Mistake ReferenceTemperatureForgotten { get; } = New("20 °C not taken away",
        "The coefficient counts from 20 °C, so it multiplies θ − 20 °C, not θ.");

    internal static Mistake RiseForValue { get; } = New("only the change",
        "That is the change alone; the value asked for contains the starting value too.");

    internal static Mistake FahrenheitUsed { get; } = New("°F put where °C belongs",
        "The formula takes degrees Celsius; convert first: θ in °C is (θ in °F − 32)/1.8.");

    internal static Mistake DeratingTwice { get; } = New("derating multiplied twice",
        "A derating factor was applied two times. Each condition reduces the rating once.");

    internal static Mistake DeratingForgotten { get; } = New("derating forgotten",
        "The table's current holds at the table's conditions; here it must be multiplied by the factor for this place.");

    internal static Mistake DeratingInverted { get; } = New("divided by the derating factor",
        "The wire may carry less here, so the table's current is multiplied by the factor.");

    internal static Mistake DeratingComplement { get; } = New("what derating takes away",
        "A factor of 0.8 leaves 80 % of the rating; 20 % is what is lost.");

    internal static Mistake OneFactorOnly { get; } = New("one of two factors forgotten",
        "Heat around the wire and heat from its neighbours each reduce the rating; both factors multiply.");

    internal static Mistake FactorsAveraged { get; } = New("factors averaged",
        "Factors of separate conditions multiply; their mean is too much.");

    internal static Mistake FuseForLoadNotWire { get; } = New("fuse sized for the load but not the wire",
        "The wire carries the load, but the fuse lets more than the load pass: the wire must carry what the fuse allows.");

    internal static Mistake FuseForTheMost { get; } = New("fuse for the load's most, wire forgotten",
        "The fuse is there for the wire: its rating may not be above what the wire carries here.");

    internal static Mistake LoadingForgotten { get; } = New("loading of the fuse forgotten",
        "A fuse runs only at the stated share of its rating without end; divide the load's current by that share first.");

    internal static Mistake LoadingComplement { get; } = New("the rest taken for the loading share",
        "The share is what the fuse may carry, not what must be kept free.");

    internal static Mistake LoadingMultiplied { get; } = New("load multiplied by the loading share",
        "The share holds for the fuse, so the rating is the load divided by it.");

    internal static Mistake RoundedDown { get; } = New("rounded down to a standard value",
        "Between two standard values the next larger one is taken; the smaller one does not do what was asked.");

    internal static Mistake TooLargeByOne { get; } = New("one rating more than needed",
        "A smaller rating already carries the load; a larger one protects the wire less.");

    internal static Mistake LoadingTwice { get; } = New("loading of the fuse applied twice",
        "The load is divided by the loading share once.");

    internal static Mistake OneMultipleTooLow { get; } = New("row of a smaller multiple",
        "The row of the table belongs to the multiple of the rating; divide the current by the rating first.");

    internal static Mistake PercentTakenAsVolts { get; } = New("per cent taken for volts",
        "The allowed drop is a share of the voltage; 3 % of 24 V is 0.72 V, not 3 V.");

    internal static Mistake AmpacityForgotten { get; } = New("only the drop looked at",
        "The wire keeps the drop small but would not carry what the fuse lets pass. Both conditions must hold.");

    internal static Mistake DropForgotten { get; } = New("only the current looked at",
        "The wire carries the current but loses too many volts. Both conditions must hold.");

    internal static Mistake TooThick { get; } = New("one size more than needed",
        "A smaller size already meets every condition.");

    internal static Mistake UnitSlip { get; } = New("factor of a thousand",
        "A prefix was lost on the way: milli, kilo, or per kilometre and per metre.");

    internal static Mistake PowerOfTen { get; } = New("decimal point out of place",
        "The digits are right, but the decimal point is not; go through the prefixes and the powers of ten.");

    internal static Mistake SeriesForParallel { get; } = New("series for parallel",
        "Side by side the conductances add up; the total is below the smallest part. Added resistances belong to a series.");

    internal static Mistake ParallelForSeries { get; } = New("parallel for series",
        "One after the other the resistances simply add up; the reciprocals belong to parts side by side.");

    internal static Mistake ReciprocalForgotten { get; } = New("reciprocal not taken back",
        "The sum of the reciprocals is one over the resistance; turn it over at the end.");

    internal static Mistake MeanTaken { get; } = New("mean of the values",
        "Resistances are not averaged: in series they add, in parallel their reciprocals do.");

    internal static Mistake PartForgotten { get; } = New("one part left out",
        "One of the parts given is missing from the sum.");

    internal static Mistake Inverted { get; } = New("fraction upside down",
        "The quantities were divided the wrong way round; compare the units of both sides.");

    internal static Mistake Multiplied { get; } = New("multiplied where to divide",
        "A product stands where a quotient belongs; compare the units of both sides.");

    internal static Mistake Divided { get; } = New("divided where to multiply",
        "A quotient stands where a product belongs; compare the units of both sides.");

    internal static Mistake SquareForgotten { get; } = New("square forgotten",
        "The quantity enters with its square; it was taken once only.");

    internal static Mistake SectionNotSquared { get; } = New("section not squared",
        "The section enters with its square, as the current does.");

    internal static Mistake SquareAdded { get; } = New("square where none belongs",
        "The quantity enters once; it was squared.");

    internal static Mistake PowerForDrop { get; } = New("power for voltage",
        "I²·R is a power in watts; the drop is I·R.");

    internal static Mistake SupplyAcrossWire { get; } = New("supply voltage put across the wire",
        "Only the drop lies across the wire, not the whole supply: its power is I²·R.");

    internal static Mistake DropForVolts { get; } = New("drop for what is left",
        "That is what is lost on the way; what arrives is the supply less that.");

    internal static Mistake DropInVolts { get; } = New("volts for per cent",
        "That is the drop in volts; as a share it is divided by the voltage and multiplied by 100.");

    internal static Mistake DropAdded { get; } = New("drop added",
        "The drop is lost on the way: it is taken from the supply.");

    internal static Mistake OneLeadOnly { get; } = New("one lead only",
        "The current passes both leads, out and back; both drop volts.");

    internal static Mistake CurrentAtSupply { get; } = New("current taken at the supply voltage",
        "A load of constant power draws its current at its own, lower voltage, so it draws more than P/U of the supply.");

    internal static Mistake SourceForgotten { get; } = New("source resistance forgotten",
        "The battery's own resistance lies in the path too.");

    internal static Mistake WireResistanceForgotten { get; } = New("resistance of the leads forgotten",
        "The leads lie in the path too and add to the battery's own resistance.");

    internal static Mistake OpenVoltageOnly { get; } = New("whole voltage instead of the difference",
        "The resistance follows from how far the voltage falls, not from the whole voltage.");

    internal static Mistake LoadedVoltageOnly { get; } = New("loaded voltage instead of the difference",
        "That divides the voltage under load; the internal resistance takes the part that is missing.");

    internal static Mistake MinutesForHours { get; } = New("minutes for hours",
        "Ampere-hours count hours; divide the minutes by 60.");

    internal static Mistake SecondsForMinutes { get; } = New("divided by 60 twice",
        "Minutes become hours by dividing by 60 once; 3600 belongs to seconds.");

    internal static Mistake ShareForgotten { get; } = New("share forgotten",
        "Only the stated share counts, not the whole.");

    internal static Mistake ShareComplement { get; } = New("what must stay in the battery",
        "That is the share which is left in the battery, not the one that is used.");

    internal static Mistake OneJointOnly { get; } = New("one joint only",
        "Every joint on the way carries the whole current; count all of them.");

    internal static Mistake LeastForLongest { get; } = New("least time for longest",
        "A fuse's gate has two ends; the question is for the longest time.");

    internal static Mistake NeighbouringGate { get; } = New("row of another multiple",
        "The row of the table belongs to the multiple of the rating; divide the current by the rating first.");

    internal static Mistake LinearForLogarithmic { get; } = New("straight line on linear axes",
        "Between two gates the line is straight on logarithmic axes, not on linear ones.");

    internal static Mistake NotInterpolated { get; } = New("not read between the gates",
        "The current lies between two gates; the time does too.");

    internal static Mistake LampAsResistor { get; } = New("lamp taken for a fixed resistance",
        "A filament cools as the voltage falls and its resistance falls too, so the current changes less than the voltage.");

    internal static Mistake Unchanged { get; } = New("taken as unchanged",
        "The value at the rated voltage was kept; at another voltage it is another.");

    internal static Mistake CurrentUnchanged { get; } = New("current taken as unchanged",
        "The current at the rated voltage was kept; at another voltage it is another.");

    internal static Mistake RatioInverted { get; } = New("ratio upside down",
        "The ratio was turned over; ask whether the result should rise or fall.");

    internal static Mistake SquaredRatio { get; } = New("ratio squared",
        "The ratio enters with another exponent than two.");

    internal static Mistake SignLost { get; } = New("sign",
        "The size is right, but the sign is not.");

    private static Mistake New(string name, string explanation)
    {
        Mistake mistake = new(name, explanation);
        Entries.Add(mistake);
        return mistake;
    }
}
