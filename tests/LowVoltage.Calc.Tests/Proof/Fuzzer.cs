using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using LowVoltage.Calc.Tests.Conventions;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>
/// Throws arguments of every kind at the public surface: sizes and numbers of wiring, every bit pattern of a double, absurd texts. A call may answer with
/// finite numbers or refuse with a documented exception; anything else is a defect. Each case follows from the seed and its own number alone.
/// </summary>
internal sealed class Fuzzer(int seed)
{
    private static readonly KeyValuePair<string, MethodInfo>[] Methods = [.. SurfaceTests.AllMethods().OrderBy(pair => pair.Key, StringComparer.Ordinal)];

    // Endless calls are looked for; what a call costs is the matter of the benchmarks.
    private static readonly TimeSpan Slow = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Hangs = TimeSpan.FromSeconds(60);

    private readonly SortedDictionary<string, string> defects = new(StringComparer.Ordinal);

    public int Answered { get; private set; }

    public int Refused { get; private set; }

    /// <summary>Runs the cases from the first one on, on all processors; returns the defects found, one for each method and kind.</summary>
    public IReadOnlyCollection<string> Run(int cases, int first = 0)
    {
        int workers = Environment.ProcessorCount;
        Worker[] all = [.. Enumerable.Range(first, workers).Select(one => new Worker(this, one, workers, first + cases))];
        Array.ForEach(all, worker => worker.Thread.Start());
        foreach (Worker worker in all)
        {
            while (!worker.Thread.Join(Slow))
            {
                if (Array.Find(all, w => w.Busy > Hangs) is { } stuck)
                {
                    lock (defects)
                    {
                        return [.. defects.Values, $"{stuck.Now} does not come back"];
                    }
                }
            }
        }

        return defects.Values;
    }

    private void Try(int number)
    {
        Random random = new(unchecked((seed * 486_187_739) + number));
        if (number % 8 == 0)
        {
            string text = FuzzText.Any(random);
            Note("Parsers", () => ParserRules.Check(text, FuzzText.AnyCulture(random)), () => $"\"{text}\"");
            return;
        }

        (string name, MethodInfo method) = Methods[random.Next(Methods.Length)];
        bool wild = random.Next(3) > 0;
        object?[] arguments = [.. method.GetParameters().Select(p => p.IsOut ? null : Argument(p.ParameterType, random, wild))];
        object? self = method.IsStatic ? null : SurfaceTests.Pick(method.DeclaringType!, random);
        string Shown() => $"{name} of {Text(self)} with {string.Join("; ", arguments.Select(Text))}";

        Note(name, () => Call(method, self, arguments, name), Shown);
    }

    private static bool Call(MethodInfo method, object? self, object?[] arguments, string name)
    {
        long start = Stopwatch.GetTimestamp();
        try
        {
            object? answer = method.Invoke(self, arguments);
            // A pause of the machine is not a slow call: it must be slow again.
            if (Stopwatch.GetElapsedTime(start) > Slow)
            {
                start = Stopwatch.GetTimestamp();
                method.Invoke(self, arguments);
                Assert.True(Stopwatch.GetElapsedTime(start) < Slow, "takes more than ten seconds");
            }

            SurfaceTests.CheckFinite(answer, name, 0);
            return true;
        }
        catch (TargetInvocationException e)
        {
            SurfaceTests.CheckRefusal(e.InnerException!, method);
            return false;
        }
    }

    private void Note(string where, Func<bool> attempt, Func<string> shown)
    {
        bool answered;
        try
        {
            answered = attempt();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            lock (defects)
            {
                defects.TryAdd($"{where} {e.GetType().Name}", $"{shown()}\n    {(e.InnerException ?? e).Message}");
            }

            return;
        }

        lock (defects)
        {
            (Answered, Refused) = answered ? (Answered + 1, Refused) : (Answered, Refused + 1);
        }
    }

    private static object? Argument(Type type, Random random, bool wild)
    {
        Type plain = type.IsByRef ? type.GetElementType()! : type;
        plain = Nullable.GetUnderlyingType(plain) ?? plain;
        if (random.Next(200) == 0 && !plain.IsValueType)
        {
            return null;
        }

        if (plain == typeof(string))
        {
            return FuzzText.Any(random);
        }

        if (!wild)
        {
            return SurfaceTests.Pick(type, random);
        }

        return plain == typeof(double) ? FuzzText.AnyNumber(random)
            : plain == typeof(int) ? random.Next(3) == 0 ? random.Next(int.MinValue, int.MaxValue) : random.Next(-5, 50)
            : typeof(IQuantity).IsAssignableFrom(plain) && plain.IsValueType ? AnyQuantity(plain, random)
            : SurfaceTests.Pick(type, random);
    }

    // Any unit the quantity has, any number that UnitsNet accepts in it.
    private static object AnyQuantity(Type type, Random random)
    {
        IQuantity zero = (IQuantity)Activator.CreateInstance(type)!;
        UnitInfo[] units = zero.QuantityInfo.UnitInfos;
        double number = FuzzText.AnyNumber(random);
        number = double.IsFinite(number) ? number : 0;
        number = type == typeof(Power) ? Math.Clamp(number, -1e20, 1e20) : number;
        try
        {
            return Quantity.From(number, units[random.Next(units.Length)].Value);
        }
        catch (Exception e) when (e is ArgumentException or OverflowException)
        {
            return zero;
        }
    }

    private static string Text(object? value) => value switch
    {
        null => "null",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        IQuantity quantity => $"{((double)quantity.Value).ToString("R", CultureInfo.InvariantCulture)} {quantity.Unit}",
        string text => $"\"{text}\"",
        Array array => $"[{string.Join(", ", array.Cast<object?>().Select(Text))}]",
        _ => value.ToString() ?? "",
    };

    private sealed class Worker
    {
        private long started = Stopwatch.GetTimestamp();
        private int number;

        public Worker(Fuzzer fuzzer, int first, int step, int end) => Thread = new Thread(() =>
        {
            for (int i = first; i < end; i += step)
            {
                Volatile.Write(ref number, i);
                Volatile.Write(ref started, Stopwatch.GetTimestamp());
                fuzzer.Try(i);
            }
        })
        {
            IsBackground = true,
        };

        public Thread Thread { get; }

        public TimeSpan Busy => Thread.IsAlive ? Stopwatch.GetElapsedTime(Volatile.Read(ref started)) : TimeSpan.Zero;

        public string Now => $"case {Volatile.Read(ref number)}";
    }
}
