namespace CircuitPage;

/// <summary>The units in which lengths and temperatures are typed and shown. Wire sizes stay those of their series; everything electrical is the same in both.</summary>
internal enum PageUnits
{
    Metric,
    Us,
}
