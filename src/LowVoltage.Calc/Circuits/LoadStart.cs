namespace LowVoltage.Calc.Circuits;

/// <summary>A load switched on, on doubles: its surges above what runs, like ones taken together, and the running current beside them.</summary>
/// <remarks>
/// All loads of one circuit are switched together (common practice, no published source). Cold lamps are one cold lamp, capacitors one capacitor, motors that start
/// equally long one motor, each behind the resistance of the path as if the others were not there: a load that is split in parts has the same start. Whoever adds the surges
/// limits them to what the path gives. Running currents belong to the operating point at the voltage given, the path's drop counted.
/// Filled once, solved for one path after another; not thread-safe.
/// </remarks>
internal sealed class LoadStart
{
    private readonly List<(Load Load, bool Fades)> running = [];
    private readonly List<Motor> motors = [];
    private string? capacitorName;
    private string? lampName;
    private double farads;
    private double coldSiemens;
    private double lampSeconds;

    /// <summary>The surges above running: name, shape, peak in A, length or time constant in s, and whether a capacitor makes it.</summary>
    internal List<(string Name, InrushWave Wave, double PeakAmperes, double Seconds, bool Charges)> Surges { get; } = [];

    /// <summary>Of a cold lamp behind the path: R·(G_cold − G_hot)/(1 + R·G_hot), by which its current falls later than its conductance.</summary>
    internal double LampSoftness { get; private set; }

    /// <summary>What all of it draws once it runs, A.</summary>
    internal double RunningAmperes { get; private set; }

    /// <summary>The start of a load, not yet behind a path.</summary>
    internal static LoadStart Of(Load load)
    {
        LoadStart start = new();
        load.AddStart(start);
        return start;
    }

    internal void AddRunning(Load load) => running.Add((load, false));

    internal void AddLamp(Load load, double siemens, double seconds)
    {
        running.Add((load, true));
        lampName ??= load.Name;
        coldSiemens += siemens;
        lampSeconds = seconds;
    }

    internal void AddCapacitor(string name, double capacitance)
    {
        capacitorName ??= name;
        farads += capacitance;
    }

    internal void AddMotor(Load load, in LoadLaw peak, double seconds)
    {
        double amperes = load.LawAt(LoadState.Running).Amperes;
        running.Add((load, false));
        for (int i = 0; i < motors.Count; i++)
        {
            if (motors[i].Seconds.Equals(seconds))
            {
                motors[i] = motors[i].With(peak, amperes);
                return;
            }
        }

        motors.Add(new Motor(load.Name, peak, seconds, amperes));
    }

    /// <summary>Finds surges and running current behind a path.</summary>
    /// <param name="volts">Voltage of the source without current.</param>
    /// <param name="ohms">Resistance of source and path; positive.</param>
    internal void Solve(double volts, double ohms)
    {
        Surges.Clear();
        RunningAmperes = LampSoftness = 0;
        double at = RunningVolts(volts, ohms), lamps = 0;
        foreach ((Load load, bool fades) in running)
        {
            double amperes = load.AmperesAt(at, LoadState.Running);
            RunningAmperes += amperes;
            lamps += fades ? amperes : 0;
        }

        foreach (Motor motor in motors)
        {
            Add(motor.Name, InrushWave.Rectangular, Behind(motor.Peak, volts, ohms) - motor.Running, motor.Seconds, false);
        }

        if (lampName is not null)
        {
            double hotSiemens = lamps / at;
            LampSoftness = Math.Max(0, ohms * (coldSiemens - hotSiemens) / (1 + (ohms * hotSiemens)));
            Add(lampName, InrushWave.Exponential, (volts / (ohms + (1 / coldSiemens))) - lamps, lampSeconds, false);
        }

        if (capacitorName is not null)
        {
            Add(capacitorName, InrushWave.Exponential, volts / ohms, ohms * farads, true);
        }
    }

    private void Add(string name, InrushWave wave, double peak, double seconds, bool charges)
    {
        if (peak > 0)
        {
            Surges.Add((name, wave, peak, seconds, charges));
        }
    }

    // Current of a conductance and a constant current behind the path; at most what the path gives.
    private static double Behind(in LoadLaw law, double volts, double ohms)
    {
        double at = (volts - (ohms * law.Amperes)) / (1 + (ohms * law.Siemens));
        return at > 0 ? (law.Siemens * at) + law.Amperes : volts / ohms;
    }

    /// <summary>Voltage at the loads while all of them run; that of the source where the path cannot feed them, which the operating point says elsewhere.</summary>
    private double RunningVolts(double volts, double ohms)
    {
        LoadLaw law = new(0, 0, 0, true);
        foreach ((Load load, _) in running)
        {
            LoadLaw own = load.LawAt(LoadState.Running);
            law = law.Plus(own.Exact ? own : new LoadLaw(0, load.AmperesAt(volts, LoadState.Running), 0, true));
        }

        // (1 + R·G)·U² − (V − R·J)·U + R·P = 0, the higher root.
        double left = volts - (ohms * law.Amperes), lead = 1 + (ohms * law.Siemens);
        double root = (left * left) - (4 * lead * ohms * law.Watts);
        return left > 0 && root >= 0 ? (left + Math.Sqrt(root)) / (2 * lead) : volts;
    }

    /// <summary>Motors that start equally long.</summary>
    private readonly struct Motor(string name, LoadLaw peak, double seconds, double running)
    {
        internal string Name => name;

        internal LoadLaw Peak => peak;

        internal double Seconds => seconds;

        internal double Running => running;

        internal Motor With(in LoadLaw more, double amperes) => new(name, peak.Plus(more), seconds, running + amperes);
    }
}
