using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Heating;

/// <summary>Adiabatic short circuit of a chain of conductors on doubles, written in the Joule integral J = ∫I²dt that all of them share.</summary>
/// <remarks>
/// No heat leaves, so every conductor's temperature depends on J alone, and its resistance grows exponentially with it:
/// <code>
/// C′·dθ/dJ = R′(θ)/n²     ⇒  R(J) = R₀·exp(κJ),  κ = α·R′20/(C′·n²),  θ(J) = θ₀ + R′₀/(C′·n²)·(exp(κJ) − 1)/κ
/// I(J)     = E/(Rs + ΣR(J))
/// dt/dJ    = 1/I²         ⇒  E²·t = Rs²·J + 2·Rs·ΣRᵢ·g(κᵢ) + ΣΣRᵢ·Rⱼ·g(κᵢ + κⱼ),  g(κ) = (exp(κJ) − 1)/κ, g(0) = J
/// </code>
/// n conductors lie in parallel, R₀ is that of all of them. The time is a closed form, convex and rising in J: Newton's method from the right finds
/// J after a time. Units: J in A²s, R in Ω, C′ in J/(m·K), κ in 1/(A²s).
/// <para><b>Others' current.</b> Where a conductor also carries a constant current Io of other circuits, its voltage Io·R(J) is taken from what drives the
/// fault, I(J) = (E − ΣIo·R(J))/(Rs + ΣR(J)), and it is heated by (I + Io)², which is at most I²·(1 + Io/Il)² while I stays at Il or above. With that factor on
/// J every conductor is at least as hot, the current at most as large and the time at least as long as in truth: a bound in J alone. It holds down to Il,
/// which the caller states by <see cref="DownTo"/> and checks at the answer. The time is then a quadrature.</para>
/// </remarks>
internal readonly struct FaultKernel
{
    private const int MostIterations = 100;

    // Of the quadrature, which is used with others' current only.
    private const double Accuracy = 1e-10;

    private readonly double volts;
    private readonly double fixedOhms;
    private readonly double leastAmperes;
    private readonly FaultLink[] links;

    internal FaultKernel(double volts, double fixedOhms, FaultLink[] links)
        : this(volts, fixedOhms, links, double.PositiveInfinity)
    {
        for (int i = 0; i < links.Length; i++)
        {
            HasOthers |= links[i].Others > 0;
        }
    }

    private FaultKernel(double volts, double fixedOhms, FaultLink[] links, double leastAmperes)
    {
        this.volts = volts;
        this.fixedOhms = fixedOhms;
        this.links = links;
        this.leastAmperes = leastAmperes;
        MeltingJoules = double.PositiveInfinity;
        for (int i = 0; i < links.Length; i++)
        {
            MeltingJoules = Math.Min(MeltingJoules, JoulesTo(i, links[i].MeltingCelsius));
        }
    }

    internal int Count => links.Length;

    /// <summary>Whether a conductor carries others' current; then <see cref="DownTo"/> must have been asked before anything else.</summary>
    internal bool HasOthers { get; private init; }

    /// <summary>The Joule integral at which the first conductor reaches its melting point.</summary>
    internal double MeltingJoules { get; }

    /// <summary>The bound that holds while the current is this or more; the kernel itself where nobody else's current flows.</summary>
    internal FaultKernel DownTo(double amperes) => HasOthers ? new FaultKernel(volts, fixedOhms, links, amperes) { HasOthers = true } : this;

    /// <summary>The current; zero where others' current leaves no voltage.</summary>
    internal double AmperesAt(double joules) => AmperesAt(joules, out _);

    /// <summary>The current, and how fast its logarithm falls, −d ln I/dJ.</summary>
    internal double AmperesAt(double joules, out double fall)
    {
        double ohms = fixedOhms, ohmsSlope = 0, left = volts, leftSlope = 0;
        for (int i = 0; i < links.Length; i++)
        {
            double rate = RateOf(i), own = links[i].Ohms * Math.Exp(rate * joules);
            ohms += own;
            ohmsSlope += rate * own;
            left -= links[i].Others * own;
            leftSlope += rate * links[i].Others * own;
        }

        fall = (ohmsSlope / ohms) + (left > 0 ? leftSlope / left : double.PositiveInfinity);
        return Math.Max(0, left / ohms);
    }

    /// <summary>Temperature of a conductor after a Joule integral; not limited by melting.</summary>
    internal double CelsiusAt(int index, double joules) => links[index].CelsiusAt(links[index].Heat(leastAmperes) * joules);

    /// <summary>The conductor that is hottest after a Joule integral.</summary>
    internal int HottestAt(double joules)
    {
        int hottest = 0;
        for (int i = 1; i < links.Length; i++)
        {
            hottest = CelsiusAt(i, joules) > CelsiusAt(hottest, joules) ? i : hottest;
        }

        return hottest;
    }

    /// <summary>The Joule integral that takes a conductor to a temperature; zero when it is that hot already.</summary>
    internal double JoulesTo(int index, double celsius) => links[index].JoulesTo(celsius) / links[index].Heat(leastAmperes);

    /// <summary>Seconds in which a Joule integral has flowed.</summary>
    internal double SecondsTo(double joules)
    {
        if (HasOthers)
        {
            return GaussKronrod.Integrate(new Pace(this), 0, joules, Accuracy);
        }

        double sum = fixedOhms * fixedOhms * joules;
        for (int i = 0; i < links.Length; i++)
        {
            double cross = 2 * fixedOhms * FaultLink.Growth(links[i].PerJoule, joules);
            for (int j = 0; j < links.Length; j++)
            {
                cross += links[j].Ohms * FaultLink.Growth(links[i].PerJoule + links[j].PerJoule, joules);
            }

            sum += links[i].Ohms * cross;
        }

        return sum / (volts * volts);
    }

    /// <summary>The Joule integral that has flowed after a time; false when a conductor melts before, and then that of its melting.</summary>
    internal bool TryJoulesAfter(double seconds, out double joules)
    {
        joules = MeltingJoules;
        if (SecondsTo(MeltingJoules) < seconds)
        {
            return false;
        }

        // The current only falls, so I₀²·t is too much, and the convex time brings Newton back from there without passing the root.
        double first = AmperesAt(0);
        double next = Math.Min(first * first * seconds, MeltingJoules);
        for (int i = 0; i < MostIterations; i++)
        {
            joules = next;
            double amperes = AmperesAt(joules);
            next = Math.Max(0, joules - ((SecondsTo(joules) - seconds) * amperes * amperes));
            if (next >= joules * (1 - 1e-15))
            {
                break;
            }
        }

        return true;
    }

    private double RateOf(int index) => links[index].PerJoule * links[index].Heat(leastAmperes);

    /// <summary>dt/dJ.</summary>
    private readonly struct Pace(FaultKernel fault) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            double amperes = fault.AmperesAt(x);
            return 1 / (amperes * amperes);
        }
    }
}
