namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>A load as the currents of its parts.</summary>
internal sealed class OwnLoad
{
    private const double LampSettling = 0.05 / 3;
    private readonly List<(LoadGiven Given, double Duty, double MostDuty)> leaves = [];

    public OwnLoad(LoadGiven given)
    {
        Gather(given, 1, 1);
        foreach (LoadGiven each in Walk(given))
        {
            Farads += each.CapacitorFarads ?? 0;
            LeastVolts = each.LeastVolts is { } volts ? Math.Max(LeastVolts, volts) : LeastVolts;
        }
    }

    public double Farads { get; }

    /// <summary>Zero where none is stated.</summary>
    public double LeastVolts { get; }

    /// <summary>Whether it has a motor that draws more at its start than running.</summary>
    public bool Starts => leaves.Exists(leaf => leaf.Given.Type == LoadType.Motor && leaf.Given.B > leaf.Given.A);

    /// <summary>Whether it has a motor that nothing of its own switches off when it is held still.</summary>
    public bool Stalls => leaves.Exists(leaf => leaf.Given is { Type: LoadType.Motor, CutsOut: false });

    /// <summary>Whether it draws more after switching on than in running.</summary>
    public bool Surges => Farads > 0 || HasLamp || Starts;

    /// <summary>Whether it has a part that draws more the lower the voltage.</summary>
    public bool HasPower => leaves.Exists(leaf => leaf.Given.Type == LoadType.Power);

    public bool HasDuty => leaves.Exists(leaf => leaf.MostDuty < 1);

    public bool HasLamp => leaves.Exists(leaf => leaf.Given.Type == LoadType.Lamp);

    /// <summary>Longest start of a motor, s.</summary>
    public double StartSeconds => leaves.Where(leaf => leaf.Given.Type == LoadType.Motor).Select(leaf => leaf.Given.D).DefaultIfEmpty(0).Max();

    /// <summary>Current in running while everything is on.</summary>
    public double Running(double volts) => leaves.Sum(leaf => Running(leaf.Given, volts));

    /// <summary>r.m.s. current with the pulses on top of each other; where a duty cycle lies within another with what flows at least, their product.</summary>
    public double Heating(double volts) => Nested(Pulses(volts).Select(pulse => (pulse.Duty, pulse.Amperes)));

    /// <summary>Each part's current with the share of the time that it is on, and the smaller share of a duty cycle within another.</summary>
    public IEnumerable<(double Duty, double MostDuty, double Amperes)> Pulses(double volts) => leaves.Select(leaf => (leaf.Duty, leaf.MostDuty, Running(leaf.Given, volts)));

    /// <summary>r.m.s. of pulses on top of each other.</summary>
    public static double Nested(IEnumerable<(double Duty, double Amperes)> pulses)
    {
        double square = 0, below = 0, sum = 0;
        foreach ((double duty, double amperes) in pulses.OrderByDescending(part => part.Duty))
        {
            // The longest pulse begins with it: what is on for a share d or longer flows together for d.
            square += duty * (((sum + amperes) * (sum + amperes)) - (sum * sum));
            sum += amperes;
            below += amperes * Math.Sqrt(duty);
        }

        return Math.Min(Math.Sqrt(square), below);
    }

    /// <summary>r.m.s. by the sum of the parts' r.m.s.: no timing gives more. Of a duty cycle within another the smaller share: their pulses may coincide.</summary>
    public double MostHeating(double volts) => leaves.Sum(leaf => Running(leaf.Given, volts) * Math.Sqrt(leaf.MostDuty));

    /// <summary>Current some time after switching on. Constant power never below the volts at which it works in running.</summary>
    /// <param name="volts">Volts at the load.</param>
    /// <param name="seconds">Time since switching on.</param>
    /// <param name="runningVolts">Volts at the load in running.</param>
    /// <param name="alone">Current that a resistance alone behind the path would take at the first moment: a lamp's falls from there to its running current.</param>
    public double Starting(double volts, double seconds, double runningVolts, Func<double, double> alone)
    {
        double sum = 0;
        foreach ((LoadGiven given, _, _) in leaves)
        {
            sum += given.Type switch
            {
                LoadType.Motor when seconds <= given.D => Winding(given, volts, given.B),
                LoadType.Lamp => Lamp(given, volts, seconds, alone),
                LoadType.Power => given.A / given.B / Math.Max(volts, runningVolts),
                LoadType.Current or LoadType.Motor => volts > 0 ? given.A : 0,
                _ => Running(given, volts),
            };
        }

        return sum;
    }

    /// <summary>Every motor at its peak, all else running.</summary>
    public double AtStart(double volts) => leaves.Sum(leaf => leaf.Given.Type == LoadType.Motor ? Winding(leaf.Given, volts, leaf.Given.B) : Running(leaf.Given, volts));

    /// <summary>Every motor held still, all else running.</summary>
    public double Stalled(double volts) => leaves.Sum(leaf => leaf.Given.Type == LoadType.Motor ? Winding(leaf.Given, volts, leaf.Given.C) : Running(leaf.Given, volts));

    private static double Winding(LoadGiven motor, double volts, double amperes) => volts <= 0 ? 0 : double.IsNaN(motor.E) ? amperes : amperes * volts / motor.E;

    private static double Lamp(LoadGiven lamp, double volts, double seconds, Func<double, double> alone)
    {
        if (volts <= 0)
        {
            return 0;
        }

        double rated = lamp.A / lamp.B, coldOhms = lamp.B / rated / lamp.C, hot = rated * Math.Pow(volts / lamp.B, 0.55);
        double falling = hot + (Math.Max(0, alone(coldOhms) - hot) * Math.Exp(-seconds / LampSettling));
        return Math.Min(volts / coldOhms, falling);
    }

    private static double Running(LoadGiven given, double volts) => given.Type switch
    {
        LoadType.Resistance => volts / given.A,
        LoadType.Power => given.A / given.B / volts,
        LoadType.Lamp => given.A / given.B * Math.Pow(volts / given.B, 0.55),
        _ => given.A,
    };

    private static IEnumerable<LoadGiven> Walk(LoadGiven given) => given.Parts.SelectMany(Walk).Prepend(given);

    private void Gather(LoadGiven given, double duty, double mostDuty)
    {
        double own = duty * (given.Duty ?? 1), most = Math.Min(mostDuty, given.Duty ?? 1);
        if (given.Type != LoadType.Together)
        {
            leaves.Add((given, own, most));
        }

        foreach (LoadGiven part in given.Parts)
        {
            Gather(part, own, most);
        }
    }
}
