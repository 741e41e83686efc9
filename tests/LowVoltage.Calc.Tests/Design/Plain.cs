namespace LowVoltage.Calc.Tests.Design;

/// <summary>The designer's arithmetic written out again on plain numbers, apart from the library: constants of the sources named at each.</summary>
internal static class Plain
{
    // IEC 60028: annealed copper.
    public const double Rho = 1.0 / 58;
    public const double Alpha = 0.00393;

    // IEC 60949, from memory: β and heat capacity of copper.
    public const double Beta = 234.5;
    public const double HeatCapacity = 3.45e6;

    // ISO 8820-3 types C and F: per cent of the rating and longest time in s; from memory but for 135 %.
    public static readonly (double Multiple, double Seconds)[] BladeLongest = [(1.35, 1800), (1.6, 50), (2, 5), (3.5, 0.5), (6, 0.1)];

    // The same, least time in s.
    public static readonly (double Multiple, double Seconds)[] BladeLeast = [(1.35, 0.75), (1.6, 0.25), (2, 0.15), (3.5, 0.04), (6, 0.02)];

    // DIN 72581-3 form E; least times of the same.
    public static readonly (double Multiple, double Seconds)[] HighCurrentLeast = [(1.35, 60), (2, 2), (3.5, 0.2), (6, 0.04)];

    // DIN 72581-3 form E.
    public static readonly (double Multiple, double Seconds)[] HighCurrentLongest = [(1.35, 1800), (2, 60), (3.5, 7), (6, 1)];

    /// <summary>Ω/m at a temperature, from Ω/km at 20 °C.</summary>
    public static double PerMeter(double ohmsPerKilometer, double celsius) => ohmsPerKilometer / 1000 * (1 + (Alpha * (celsius - 20)));

    /// <summary>Ω/km at 20 °C of stranded AWG copper: ASTM B258 diameter, 2 % lay (ASTM B8).</summary>
    public static double AwgPerKilometer(int number) => 1000 * Rho * 1.02 / AwgArea(number);

    public static double AwgArea(int number) => Math.PI / 4 * Math.Pow(0.127 * Math.Pow(92, (36 - number) / 39.0), 2);

    /// <summary>The square law of a rating.</summary>
    public static double Warm(double ambient, double limit, double amperes, double rated) => ambient + ((limit - ambient) * amperes * amperes / (rated * rated));

    /// <summary>Where volts behind fixed ohms and a chain of self-heated ohms meet a load: by repetition from no current, which finds the stable point.</summary>
    /// <returns>Current, volts at the load, ohms of fixed and chain together.</returns>
    public static (double Amperes, double Volts, double Ohms) Settle(double volts, double fixedOhms, Func<double, double> chainOhms, Func<double, double> load)
    {
        double i = load(volts);
        for (int k = 0; k < 5000; k++)
        {
            // Half steps: a strong load swings about its point otherwise.
            i = 0.5 * (i + load(volts - (i * (fixedOhms + chainOhms(i)))));
        }

        double ohms = fixedOhms + chainOhms(i);
        return (i, volts - (i * ohms), ohms);
    }

    /// <summary>Straight in log-log between the points, constant I²t beyond the last.</summary>
    public static double Time((double Multiple, double Seconds)[] gates, double rating, double amperes)
    {
        double x = amperes / rating;
        int last = gates.Length - 1;
        if (x >= gates[last].Multiple)
        {
            return gates[last].Seconds * gates[last].Multiple * gates[last].Multiple / (x * x);
        }

        int k = Array.FindLastIndex(gates, g => g.Multiple <= x);
        (double m, double s) = gates[k];
        (double n, double t) = gates[k + 1];
        return Math.Exp(Math.Log(s) + (Math.Log(x / m) / Math.Log(n / m) * Math.Log(t / s)));
    }

    /// <summary>The greatest I²t between two currents, looked for at many currents and at the points themselves.</summary>
    public static double MostJoule((double Multiple, double Seconds)[] gates, double rating, double least, double greatest)
    {
        double most = 0;
        for (int k = 0; k <= 4000; k++)
        {
            double i = least * Math.Pow(greatest / least, k / 4000.0);
            most = Math.Max(most, i * i * Time(gates, rating, i));
        }

        foreach ((double multiple, _) in gates)
        {
            double i = multiple * rating;
            most = i >= least && i <= greatest ? Math.Max(most, i * i * Time(gates, rating, i)) : most;
        }

        return most;
    }

    /// <summary>A fault whose current falls as its one stretch of copper heats, by small steps of the Joule integral, until the fuse has had what it needs at the current by then.</summary>
    /// <returns>Time and current at that moment.</returns>
    public static (double Seconds, double Amperes) Clear(
        (double Multiple, double Seconds)[] gates, double rating, double volts, double fixedOhms, double meters, double ohmsPerKilometer, double nominalArea, double initial)
    {
        double area = Math.Min(Rho / (ohmsPerKilometer / 1000), nominalArea) * 1e-6;
        double amperes(double celsius) => volts / (fixedOhms + (meters * PerMeter(ohmsPerKilometer, celsius)));
        double warming(double celsius) => PerMeter(ohmsPerKilometer, celsius) / (HeatCapacity * area);
        double first = amperes(initial), most = first * first * Time(gates, rating, first), theta = initial, joule = 0, time = 0, step = most / 20_000;
        while (true)
        {
            double middle = theta + (0.5 * step * warming(theta)), next = theta + (step * warming(middle));
            double i = amperes(next), needed = i * i * Time(gates, rating, i);
            double spent = step / (amperes(middle) * amperes(middle));
            if (joule + step >= needed)
            {
                // The last step in proportion.
                double before = (amperes(theta) * amperes(theta) * Time(gates, rating, amperes(theta))) - joule, after = joule + step - needed;
                double share = before / (before + after);
                return (time + (share * spent), amperes(theta + (share * (next - theta))));
            }

            (theta, joule, time) = (next, joule + step, time + spent);
        }
    }

    /// <summary>A wire that loses its heat in proportion to its rise, so that a rated current holds a rated temperature: its temperature after a time, or settled.</summary>
    /// <remarks>C·dθ/dt = I²·R(θ) − G·(θ − ambient), R straight in θ: an exponential.</remarks>
    public static double Heated(
        double ohmsPerKilometer, double nominalArea, double ambient, double rated, double ratedCelsius, double initial, double amperes, double seconds, double? ratedAmbient = null)
    {
        double capacity = HeatCapacity * Math.Min(Rho / (ohmsPerKilometer / 1000), nominalArea) * 1e-6;
        double loss = rated * rated * PerMeter(ohmsPerKilometer, ratedCelsius) / (ratedCelsius - (ratedAmbient ?? ambient));
        double heat = amperes * amperes * PerMeter(ohmsPerKilometer, ambient), more = amperes * amperes * ohmsPerKilometer / 1000 * Alpha;
        double rate = (more - loss) / capacity, pole = ambient + (heat / (loss - more));
        return double.IsInfinity(seconds)
            ? (more < loss ? pole : double.PositiveInfinity)
            : pole + ((initial - pole) * Math.Exp(rate * seconds));
    }

    /// <summary>A lamp that fades from a peak to what runs, on a fuse: by small steps of time while it is above the rating.</summary>
    /// <returns>Share of melting in one start, ∫dt/t_least(i) by the line between the gates, and ∫i²dt.</returns>
    public static (double Melting, double Joule) Fading((double Multiple, double Seconds)[] least, double rating, double running, double peak, double constant, double path, double coldOhms, double hotOhms)
    {
        // The filament's conductance fades from cold to hot; the path is in series. What runs beside is none here.
        double volts = peak * (path + coldOhms), cold = 1 / coldOhms, hot = 1 / hotOhms, above = (1 / ((volts / rating) - path)) - hot;
        double until = constant * Math.Log((cold - hot) / above), melting = 0, joule = 0;
        Assert.True(Math.Abs((volts * hot / (1 + (path * hot))) - running) < 1e-6 * running);
        const int Steps = 200_000;
        for (int k = 0; k < Steps; k++)
        {
            double siemens = hot + ((cold - hot) * Math.Exp(-until * (k + 0.5) / Steps / constant)), i = volts / (path + (1 / siemens));
            joule += i * i * until / Steps;
            melting += until / Steps / Least(least, rating, i);
        }

        return (melting, joule);
    }

    /// <summary>The least time above the rating: below the first gate that gate's, which holds already.</summary>
    public static double Least((double Multiple, double Seconds)[] gates, double rating, double amperes) =>
        amperes < gates[0].Multiple * rating ? gates[0].Seconds : Time(gates, rating, amperes);

    /// <summary>IEC 60949: θf of copper after I²t.</summary>
    public static double Adiabatic(double ohmsPerKilometer, double nominalArea, double joule, double initial)
    {
        double area = Math.Min(Rho / (ohmsPerKilometer / 1000), nominalArea);
        double k2 = HeatCapacity * (Beta + 20) * 1e-6 * 1e-6 / (Rho * 1e-6);
        return ((initial + Beta) * Math.Exp(joule / (k2 * area * area))) - Beta;
    }
}
