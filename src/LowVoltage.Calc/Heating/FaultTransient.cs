using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>A short circuit from a real source, whose current falls as the conductors heat: current, temperature and Joule integral against time.</summary>
/// <remarks>
/// <code>
/// I(θ) = E/[Rs + Σ R20·(1 + α·(θ − 20))],   C′·dθ/dt = I²·R′(θ) − q′(θ)
/// without loss:  R(J) = R₀·exp(κJ),  θ(J) = θ₀ + R′₀/C′·(exp(κJ) − 1)/κ,  κ = α·R′20/C′
///                E²·t = Rs²·J + 2·Rs·ΣRᵢ·g(κᵢ) + ΣΣRᵢ·Rⱼ·g(κᵢ + κⱼ),  g(κ) = (exp(κJ) − 1)/κ
/// with loss:     t = ∫ C′·dθ/(I²·R′ − q′),  J = ∫ I²·C′·dθ/(I²·R′ − q′)
/// </code>
/// <para><b>Symbols.</b> E [V] open-circuit voltage; Rs [Ω] fixed resistance; θ [°C]; C′ [J/(m·K)] heat capacity of the metal alone, volumetric heat
/// capacity times the effective section; J [A²s] Joule integral, which all conductors of the loop share; q′ [W/m] heat that leaves
/// (<see cref="HeatBalance"/>).</para>
/// <para><b>Source.</b> The heating of IEC 60949 (adiabatic) with Ohm's law for the current; the closed form follows from both. With a
/// source of constant current it is the adiabatic equation itself, β being 1/α20 − 20.</para>
/// <para><b>Valid for</b> −100 °C to the melting point; no latent heat, no inductance, no polarisation of the battery over seconds. Without loss the temperature is an
/// upper bound, a close one up to 5 s (IEC 60949), and so is the fall of the current. <b>Accuracy.</b> Closed form 1e-12; quadrature 1e-8.</para>
/// </remarks>
public static class FaultTransient
{
    /// <summary>The source of the heating; the current is Ohm's law.</summary>
    public static Reference Reference { get; } = AdiabaticHeating.Reference;

    /// <summary>The fault after a time, no heat leaving.</summary>
    /// <param name="path">The loop.</param>
    /// <param name="time">Time since the fault began. Zero or greater.</param>
    /// <returns>The state; when a conductor melts before, the state at that moment, which says so.</returns>
    /// <exception cref="ArgumentNullException">The loop is null.</exception>
    /// <exception cref="ArgumentException">A conductor of the loop carries others' current.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside its range.</exception>
    public static FaultState StateAfter(FaultPath path, Duration time)
    {
        _ = Own(path);
        bool solid = path.Kernel.TryJoulesAfter(Accept.SecondsOrZero(time, nameof(time)), out double joules);
        return new FaultState(path.Kernel, joules, !solid);
    }

    /// <summary>The fault when a Joule integral has flowed, no heat leaving: at the let-through of a fuse, for example.</summary>
    /// <param name="path">The loop.</param>
    /// <param name="letThrough">∫I²dt since the fault began.</param>
    /// <returns>The state; when a conductor melts before, the state at that moment, which says so.</returns>
    /// <exception cref="ArgumentNullException">The loop is null.</exception>
    /// <exception cref="ArgumentException">A conductor of the loop carries others' current.</exception>
    public static FaultState StateAt(FaultPath path, JouleIntegral letThrough)
    {
        _ = Own(path);
        double melting = path.Kernel.MeltingJoules;
        bool melts = letThrough.AmpereSquaredSeconds > melting;
        return new FaultState(path.Kernel, melts ? melting : letThrough.AmpereSquaredSeconds, melts);
    }

    /// <summary>Time until the first conductor of the loop reaches a temperature, no heat leaving.</summary>
    /// <param name="path">The loop.</param>
    /// <param name="limit">The temperature, at least that of the hottest conductor at the start.</param>
    /// <returns>The time, zero when one starts at it.</returns>
    /// <exception cref="ArgumentNullException">The loop is null.</exception>
    /// <exception cref="ArgumentException">A conductor of the loop carries others' current.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range, or a conductor starts above it.</exception>
    /// <exception cref="ConductorMeltsException">A conductor melts before; <see cref="TryTimeToReach(FaultPath, Temperature, out Duration)"/> does not throw it.</exception>
    public static Duration TimeToReach(FaultPath path, Temperature limit) => TryTimeToReach(path, limit, out Duration time) ? time : throw Melts(path);

    /// <summary>Time until a conductor of the loop reaches a temperature, no heat leaving.</summary>
    /// <param name="path">The loop.</param>
    /// <param name="segment">Index of the conductor in the loop.</param>
    /// <param name="limit">The temperature, at least that of the conductor at the start.</param>
    /// <returns>The time, zero when it starts at it.</returns>
    /// <exception cref="ArgumentNullException">The loop is null.</exception>
    /// <exception cref="ArgumentException">A conductor of the loop carries others' current.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such segment, the temperature is outside its range, or the conductor starts above it.</exception>
    /// <exception cref="ConductorMeltsException">A conductor of the loop melts before; the <c>Try</c> form does not throw it.</exception>
    public static Duration TimeToReach(FaultPath path, int segment, Temperature limit) =>
        TryTimeToReach(path, segment, limit, out Duration time) ? time : throw Melts(path);

    /// <summary>Time until the first conductor of the loop reaches a temperature, or the statement that one melts before; no heat leaving.</summary>
    /// <param name="path">The loop.</param>
    /// <param name="limit">The temperature, at least that of the hottest conductor at the start.</param>
    /// <param name="time">The time; that of melting when the result is false.</param>
    /// <returns>False when a conductor melts before.</returns>
    /// <exception cref="ArgumentNullException">The loop is null.</exception>
    /// <exception cref="ArgumentException">A conductor of the loop carries others' current.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range, or a conductor starts above it.</exception>
    public static bool TryTimeToReach(FaultPath path, Temperature limit, out Duration time)
    {
        double joules = double.PositiveInfinity;
        for (int i = 0; i < Own(path).Kernel.Count; i++)
        {
            joules = Math.Min(joules, Joules(path, i, limit));
        }

        return Reaches(path, joules, out time);
    }

    /// <summary>Time until a conductor of the loop reaches a temperature, or the statement that one of the loop melts before; no heat leaving.</summary>
    /// <param name="path">The loop.</param>
    /// <param name="segment">Index of the conductor in the loop.</param>
    /// <param name="limit">The temperature, at least that of the conductor at the start.</param>
    /// <param name="time">The time; that of melting when the result is false.</param>
    /// <returns>False when a conductor of the loop melts before.</returns>
    /// <exception cref="ArgumentNullException">The loop is null.</exception>
    /// <exception cref="ArgumentException">A conductor of the loop carries others' current.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such segment, the temperature is outside its range, or the conductor starts above it.</exception>
    public static bool TryTimeToReach(FaultPath path, int segment, Temperature limit, out Duration time) =>
        Reaches(path, Joules(path, Accept.Count(segment, 0, Own(path).Kernel.Count - 1, nameof(segment)), limit), out time);

    /// <summary>The fault after a time, with heat leaving to the air.</summary>
    /// <param name="path">The loop of one wire.</param>
    /// <param name="time">Time since the fault began. Zero or greater.</param>
    /// <returns>The state; when the conductor melts before, the state at that moment, which says so.</returns>
    /// <exception cref="ArgumentNullException">The loop is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside its range.</exception>
    public static FaultState StateAfter(CooledFaultPath path, Duration time)
    {
        _ = path ?? throw new ArgumentNullException(nameof(path));
        return path.StateAfter(Accept.SecondsOrZero(time, nameof(time)));
    }

    /// <summary>Time until the conductor reaches a temperature, with heat leaving to the air.</summary>
    /// <param name="path">The loop of one wire.</param>
    /// <param name="limit">The temperature, from that at the start to the melting point.</param>
    /// <returns>The time, zero when it starts at it; <c>null</c>: it never gets there.</returns>
    /// <exception cref="ArgumentNullException">The loop is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range, or the conductor starts above it.</exception>
    public static Duration? TimeToReach(CooledFaultPath path, Temperature limit)
    {
        _ = path ?? throw new ArgumentNullException(nameof(path));
        double celsius = HeatBalance.Conductor(limit, path.Heat, nameof(limit));
        double seconds = celsius >= path.InitialCelsius ? path.SecondsTo(celsius) : Accept.Refuse(nameof(limit), celsius, "°C", StartOf(path.InitialCelsius));
        return double.IsInfinity(seconds) ? null : Duration.FromSeconds(seconds);
    }

    private static FaultPath Own(FaultPath path) => !(path ?? throw new ArgumentNullException(nameof(path))).Kernel.HasOthers
        ? path
        : throw new ArgumentException("path must carry the fault's current alone; a conductor of it carries others' current, for which only a bound is known (FaultClearing).", nameof(path));

    private static double Joules(FaultPath path, int segment, in Temperature limit)
    {
        double celsius = Accept.Celsius(limit, nameof(limit)), start = path.Segments[segment].InitialCelsius;
        return celsius >= start ? path.Kernel.JoulesTo(segment, celsius) : Accept.Refuse(nameof(limit), celsius, "°C", StartOf(start));
    }

    private static string StartOf(double celsius) => $"at least the {Accept.Text(celsius)} °C that the conductor starts at";

    private static bool Reaches(FaultPath path, double joules, out Duration time)
    {
        bool solid = joules <= path.Kernel.MeltingJoules * (1 + 1e-12);
        time = Duration.FromSeconds(path.Kernel.SecondsTo(solid ? joules : path.Kernel.MeltingJoules));
        return solid;
    }

    private static ConductorMeltsException Melts(FaultPath path)
    {
        FaultState state = new(path.Kernel, path.Kernel.MeltingJoules, melts: true);
        return new ConductorMeltsException(
            $"{path.Segments[state.HottestSegment]} melts ({Accept.Text(state.HottestCelsius)} °C) after {Accept.Text(state.Seconds)} s; the temperature is not reached before.",
            state.HottestCelsius,
            state.Seconds);
    }
}
