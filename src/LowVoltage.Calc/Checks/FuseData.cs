namespace LowVoltage.Calc.Checks;

/// <summary>What to say where a fuse's published data do not answer a check: nothing shows that the wire or the fuse is wrong.</summary>
internal static class FuseData
{
    internal const string Missing =
        "What is undetermined about the fuse: get its d.c. voltage, breaking capacity and operating times from its manufacturer, or choose a fuse for which they are published.";
}
