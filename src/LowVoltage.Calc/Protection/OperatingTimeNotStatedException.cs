namespace LowVoltage.Calc.Protection;

/// <summary>No operating time can be given: none is published for the fuse, or it need not open at that current.</summary>
/// <remarks>The message says which. <see cref="FuseRating.TryOperatingTime"/> does not throw it.</remarks>
public sealed class OperatingTimeNotStatedException : InvalidOperationException
{
    internal OperatingTimeNotStatedException(string message)
        : base(message)
    {
    }
}
