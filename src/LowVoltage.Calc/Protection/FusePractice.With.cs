using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <content>Varied by calls: for languages without object initialisers of <c>init</c> properties.</content>
public sealed partial class FusePractice
{
    /// <summary>The same practice with another loading of fuses.</summary>
    /// <param name="loading">See <see cref="Loading"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public FusePractice WithLoading(double loading) => new(this) { Loading = loading };

    /// <summary>The same practice with another source of its loading.</summary>
    /// <param name="loadingReference">See <see cref="LoadingReference"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public FusePractice WithLoadingReference(Reference loadingReference) => new(this) { LoadingReference = loadingReference };

    /// <summary>The same practice with another largest fuse for a wire.</summary>
    /// <param name="shareOfAmpacity">See <see cref="ShareOfAmpacity"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public FusePractice WithShareOfAmpacity(double shareOfAmpacity) => new(this) { ShareOfAmpacity = shareOfAmpacity };

    /// <summary>The same practice with another source of that share.</summary>
    /// <param name="shareReference">See <see cref="ShareReference"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public FusePractice WithShareReference(Reference shareReference) => new(this) { ShareReference = shareReference };

    /// <summary>The same practice with another overload allowance, or none.</summary>
    /// <param name="overload">See <see cref="Overload"/>.</param>
    /// <returns>A copy.</returns>
    public FusePractice WithOverload(OverloadAllowance? overload) => new(this) { Overload = overload };

    /// <summary>The same practice with another longest time of a fault.</summary>
    /// <param name="faultTime">See <see cref="FaultTime"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public FusePractice WithFaultTime(Duration faultTime) => new(this) { FaultTime = faultTime };

    /// <summary>The same practice with another source of that time.</summary>
    /// <param name="faultReference">See <see cref="FaultReference"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    public FusePractice WithFaultReference(Reference faultReference) => new(this) { FaultReference = faultReference };

    /// <summary>The same practice with another rule for the distance of the fuse from its source, or none.</summary>
    /// <param name="distance">See <see cref="Distance"/>.</param>
    /// <returns>A copy.</returns>
    public FusePractice WithDistance(SourceDistance? distance) => new(this) { Distance = distance };
}
