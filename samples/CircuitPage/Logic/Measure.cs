namespace CircuitPage;

/// <summary>What a number is, as far as the two systems of units differ.</summary>
internal enum Measure
{
    /// <summary>The same in both.</summary>
    Same,
    Length,
    Temperature,
}
