using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>One way in which a harness is used: which loads are on and what they are doing, which switches are closed, how warm it is, at which supply voltages.</summary>
/// <remarks>Immutable. Everything that is not named runs, every switch is as its harness says, the air as its places say, and all three supply levels are looked at.</remarks>
public sealed class LoadCase
{
    private readonly Dictionary<string, LoadUse> uses;
    private readonly Dictionary<string, bool> switches;

    private LoadCase(string name, Dictionary<string, LoadUse> uses, Dictionary<string, bool> switches, double? ambientCelsius, SupplyLevel? level)
    {
        Name = HarnessName.Check(name, nameof(name));
        this.uses = uses;
        this.switches = switches;
        AmbientCelsius = ambientCelsius;
        Level = level;
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>The supply level that it is limited to; <c>null</c> for all three.</summary>
    public SupplyLevel? Level { get; }

    /// <summary>Temperature of the air at every place; <c>null</c> where each place has its own.</summary>
    public Temperature? Ambient => AmbientCelsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The loads that are off.</summary>
    public IReadOnlyList<string> Off => Where(LoadUse.Off);

    /// <summary>The loads that are starting.</summary>
    public IReadOnlyList<string> Starting => Where(LoadUse.Starting);

    /// <summary>The motors that are stalled.</summary>
    public IReadOnlyList<string> Stalled => Where(LoadUse.Stalled);

    /// <summary>The switches whose position is stated, and whether they are closed.</summary>
    public IReadOnlyDictionary<string, bool> Switches => switches;

    /// <summary>Everything on, at all three supply levels.</summary>
    public static LoadCase AllOn { get; } = Create("all on");

    internal double? AmbientCelsius { get; }

    internal IEnumerable<string> NamedLoads => uses.Keys;

    /// <summary>A case in which everything runs; the methods below change that.</summary>
    /// <param name="name">What it is called; not empty.</param>
    /// <returns>The case.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static LoadCase Create(string name) => new(name, new(StringComparer.Ordinal), new(StringComparer.Ordinal), null, null);

    /// <summary>The same with some loads off.</summary>
    /// <param name="loads">Names of the loads.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The array or a name is null.</exception>
    public LoadCase WithOff(params string[] loads) => With(loads, LoadUse.Off);

    /// <summary>The same with some loads starting: a motor, a cold lamp.</summary>
    /// <param name="loads">Names of the loads.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The array or a name is null.</exception>
    public LoadCase WithStarting(params string[] loads) => With(loads, LoadUse.Starting);

    /// <summary>The same with some motors stalled.</summary>
    /// <param name="loads">Names of the loads.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The array or a name is null.</exception>
    public LoadCase WithStalled(params string[] loads) => With(loads, LoadUse.Stalled);

    /// <summary>The same with a switch open or closed.</summary>
    /// <param name="name">Name of the switch.</param>
    /// <param name="isClosed">Whether it is closed.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    public LoadCase WithSwitch(string name, bool isClosed)
    {
        Dictionary<string, bool> changed = new(switches, StringComparer.Ordinal) { [name ?? throw new ArgumentNullException(nameof(name))] = isClosed };
        return new LoadCase(Name, uses, changed, AmbientCelsius, Level);
    }

    /// <summary>The same in air of one temperature everywhere.</summary>
    /// <param name="ambient">−60 °C to 250 °C; <c>null</c> where each place has its own.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public LoadCase WithAmbient(Temperature? ambient) => new(
        Name, uses, switches, ambient is { } given ? Accept.Within(Accept.Celsius(given, nameof(ambient)), -60, 250, "°C", nameof(ambient)) : null, Level);

    /// <summary>The same at one supply level.</summary>
    /// <param name="level">The level; <c>null</c> for all three.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is not one of its enumeration.</exception>
    public LoadCase WithLevel(SupplyLevel? level) =>
        new(Name, uses, switches, AmbientCelsius, level is { } given ? SourceNumbers.Check(given, nameof(level)) : null);

    /// <inheritdoc/>
    public override string ToString() => Name;

    internal LoadUse UseOf(string load) => uses.TryGetValue(load, out LoadUse use) ? use : LoadUse.Running;

    internal bool IsClosed(HarnessSwitch contact) => switches.TryGetValue(contact.Id, out bool closed) ? closed : contact.IsClosed;

    /// <summary>The same with what starts or stalls running.</summary>
    internal LoadCase AsRunning()
    {
        Dictionary<string, LoadUse> steady = new(StringComparer.Ordinal);
        foreach (KeyValuePair<string, LoadUse> use in uses.Where(u => u.Value == LoadUse.Off))
        {
            steady.Add(use.Key, use.Value);
        }

        return steady.Count == uses.Count ? this : new LoadCase(Name, steady, switches, AmbientCelsius, Level);
    }

    /// <summary>Whether another case is the same but for its name.</summary>
    internal bool IsLike(LoadCase other) =>
        Level == other.Level && Equals(AmbientCelsius, other.AmbientCelsius) && uses.Count == other.uses.Count && switches.Count == other.switches.Count
        && uses.All(u => other.uses.TryGetValue(u.Key, out LoadUse use) && use == u.Value)
        && switches.All(s => other.switches.TryGetValue(s.Key, out bool closed) && closed == s.Value);

    private LoadCase With(string[] loads, LoadUse use)
    {
        Dictionary<string, LoadUse> changed = new(uses, StringComparer.Ordinal);
        foreach (string load in loads ?? throw new ArgumentNullException(nameof(loads)))
        {
            changed[load ?? throw new ArgumentNullException(nameof(loads), "A name is null.")] = use;
        }

        return new LoadCase(Name, changed, switches, AmbientCelsius, Level);
    }

    private string[] Where(LoadUse use) => [.. uses.Where(u => u.Value == use).Select(u => u.Key)];
}
