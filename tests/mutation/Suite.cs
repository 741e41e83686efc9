using System.Diagnostics;
using System.Reflection;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace Mutation;

/// <summary>The test cases of an assembly, run in this process.</summary>
internal sealed class Suite
{
    /// <summary>The classes of the tests that hold all data, all explanations and whole sheets against a reviewed text: slow, but they notice most.</summary>
    internal static readonly string[] TypesThatReadAll = ["LowVoltage.Calc.Tests.Conventions.CatalogueTests", "LowVoltage.Calc.Tests.Conventions.RefusalSnapshotTests", "LowVoltage.Calc.Tests.Working.ExplanationSnapshotTests", "LowVoltage.Calc.Tests.Design.DesignSnapshotTests", "LowVoltage.Calc.Tests.Teaching.SheetSnapshotTests", "LowVoltage.Calc.Tests.Teaching.ProblemSnapshotTests"];

    private readonly ITestFrameworkExecutor executor;

    /// <summary>The cases of some types, or of the whole assembly.</summary>
    internal Suite(string path, params string[] types)
    {
        Assembly assembly = Assembly.LoadFrom(Path.GetFullPath(path));
        XunitTestFramework framework = new(new Silent()) { SourceInformationProvider = new NoSource() };
        executor = framework.GetExecutor(assembly.GetName());
        Finder finder = new();
        using ITestFrameworkDiscoverer discoverer = framework.GetDiscoverer(Reflector.Wrap(assembly));
        Options options = new();
        options.SetValue<bool?>("xunit.discovery.PreEnumerateTheories", true);
        options.SetValue<bool?>("xunit.discovery.SynchronousMessageReporting", true);
        foreach (string type in types)
        {
            discoverer.Find(type, false, finder, options);
            finder.Done.WaitOne();
            finder.Done.Reset();
        }

        if (types.Length == 0)
        {
            discoverer.Find(false, finder, options);
            finder.Done.WaitOne();
        }

        string only = Environment.GetEnvironmentVariable("MUTATION_ONLY") ?? "";
        Cases = finder.Cases.Where(c => System.Text.RegularExpressions.Regex.IsMatch(c.DisplayName, only)).GroupBy(c => c.UniqueID).ToDictionary(g => g.Key, g => g.First());
    }

    internal IReadOnlyDictionary<string, ITestCase> Cases { get; }

    internal static bool ReadsAll(ITestCase test) => TypesThatReadAll.Contains(test.TestMethod.TestClass.Class.Name);

    /// <summary>Runs some cases; null when they took longer than allowed, which leaves this process unfit for another run.</summary>
    internal Outcome? Run(IEnumerable<ITestCase> cases, bool stopAtFailure, TimeSpan most)
    {
        Listener listener = new(stopAtFailure);
        Options options = new();
        options.SetValue<bool?>("xunit.execution.DisableParallelization", true);
        options.SetValue<bool?>("xunit.execution.SynchronousMessageReporting", true);
        Stopwatch clock = Stopwatch.StartNew();
        // It may run the tests on the calling thread, which would then never notice that one does not end.
        new Thread(() => executor.RunTests(cases, listener, options), 16 << 20) { IsBackground = true }.Start();
        return listener.Done.WaitOne(most) ? new Outcome(listener.Failed, clock.Elapsed) : null;
    }

    internal sealed record Outcome(string? Failed, TimeSpan Took);

    private sealed class Options : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
    {
        private readonly Dictionary<string, object?> values = [];

        public TValue GetValue<TValue>(string name) => values.TryGetValue(name, out object? value) ? (TValue)value! : default!;

        public void SetValue<TValue>(string name, TValue value) => values[name] = value;
    }

    private class Silent : IMessageSink
    {
        public virtual bool OnMessage(IMessageSinkMessage message) => true;
    }

    private sealed class Finder : Silent
    {
        internal List<ITestCase> Cases { get; } = [];

        internal ManualResetEvent Done { get; } = new(false);

        public override bool OnMessage(IMessageSinkMessage message)
        {
            if (message is ITestCaseDiscoveryMessage found)
            {
                Cases.Add(found.TestCase);
            }
            else if (message is IDiscoveryCompleteMessage)
            {
                Done.Set();
            }

            return true;
        }
    }

    private sealed class Listener(bool stop) : Silent
    {
        internal string? Failed { get; private set; }

        internal ManualResetEvent Done { get; } = new(false);

        public override bool OnMessage(IMessageSinkMessage message)
        {
            switch (message)
            {
                case ITestFailed failed:
                    Failed ??= failed.Test.DisplayName;
                    break;
                case ITestClassCleanupFailure or ITestCleanupFailure or ITestAssemblyCleanupFailure or ITestCollectionCleanupFailure or IErrorMessage:
                    Failed ??= message.GetType().Name;
                    break;
                case ITestAssemblyFinished:
                    Done.Set();
                    break;
                default:
                    break;
            }

            return !(stop && Failed is not null);
        }
    }

    private sealed class NoSource : ISourceInformationProvider
    {
        public ISourceInformation GetSourceInformation(ITestCase testCase) => new SourceInformation();

        public void Dispose()
        {
        }
    }
}
