using System.Globalization;
using System.Reflection;
using LowVoltage.Calc.Tests.Conventions;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>The same question has the same answer to the last bit: asked again, and asked by many threads at once of the same shared objects.</summary>
public class SameBitsTests
{
    private const int CallsPerMethod = 12;

    [Fact]
    public void PublicMethods_AskedAgain_AnswerTheSameBits()
    {
        foreach (Call call in Calls())
        {
            Assert.Equal(call.Answer(), call.Answer());
        }
    }

    [Fact]
    public void PublicMethods_InAnyCulture_AnswerTheSameNumbersAndWords()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (Call call in Calls())
            {
                CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
                string invariant = call.Answer();
                foreach (string culture in new[] { "de-DE", "tr-TR", "ar-SA" })
                {
                    CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                    Assert.Equal(Words(invariant), Words(call.Answer()));
                }
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void PublicMethods_FromManyThreads_AnswerAsFromOne()
    {
        Call[] calls = [.. Calls()];
        string[] alone = [.. calls.Select(call => call.Answer())];
        const int Threads = 8;
        List<string> wrong = [];
        Parallel.For(0, Threads, new ParallelOptions { MaxDegreeOfParallelism = Threads }, thread =>
        {
            // Each thread in an order of its own, so that different calls meet.
            int[] order = [.. Enumerable.Range(0, calls.Length)];
            new Random(thread).Shuffle(order);
            foreach (int i in order)
            {
                if (calls[i].Answer() != alone[i])
                {
                    lock (wrong)
                    {
                        wrong.Add(calls[i].Method.Name);
                    }
                }
            }
        });

        Assert.Empty(wrong);
    }

    [Fact]
    public void Design_ReadByManyThreadsAtOnce_IsWholeForEach()
    {
        // A design works some of its answers out when it is first asked: here by all threads in the same moment.
        for (int i = 0; i < 60; i++)
        {
            Random random = new(i);
            CircuitRequirements requirements = (CircuitRequirements)SurfaceTests.Pick(typeof(CircuitRequirements), random)!;
            DesignRules rules = DesignRules.Presets[i % 4];
            if (requirements.Source.MaximumVoltage > CircuitDesigner.HighestVoltage)
            {
                continue;
            }

            string alone = Fingerprint.Of(CircuitDesigner.Design(requirements, rules));
            CircuitDesign shared = CircuitDesigner.Design(requirements, rules);
            const int Readers = 6;
            using Barrier start = new(Readers);
            string[] read = new string[Readers];
            Thread[] threads = [.. Enumerable.Range(0, Readers).Select(n => new Thread(() =>
            {
                start.SignalAndWait();
                read[n] = Fingerprint.Of(shared);
            }))];
            Array.ForEach(threads, thread => thread.Start());
            Array.ForEach(threads, thread => thread.Join());
            Assert.All(read, text => Assert.Equal(alone, text));
        }
    }

    // The runtime adds the value to an ArgumentOutOfRangeException, and writes it in the current culture.
    private static string Words(string answer) => answer.Split("\nActual value was", 2)[0].Split("\r\nActual value was", 2)[0];

    private static IEnumerable<Call> Calls()
    {
        foreach ((string name, MethodInfo method) in SurfaceTests.AllMethods().OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            Random random = new(name.Length * 104_729);
            for (int i = 0; i < CallsPerMethod; i++)
            {
                object?[] arguments = [.. method.GetParameters().Select(p => p.IsOut ? null : SurfaceTests.Pick(p.ParameterType, random))];
                yield return new Call(method, method.IsStatic ? null : SurfaceTests.Pick(method.DeclaringType!, random), arguments);
            }
        }
    }

    private sealed record Call(MethodInfo Method, object? Self, object?[] Arguments)
    {
        public string Answer() => Fingerprint.OfCall(Method, Self, Arguments);
    }
}
