namespace FleetStudy;

/// <summary>Keeps the calculations of a silo to its cores; the rest of the silo stays free to answer.</summary>
internal sealed class Lanes(int cores) : IDisposable
{
    private readonly SemaphoreSlim free = new(cores);

    public int Cores => cores;

    public async Task<T> Run<T>(Func<T> work, CancellationToken stop)
    {
        await free.WaitAsync(stop);
        try
        {
            return await Task.Run(work, stop);
        }
        finally
        {
            free.Release();
        }
    }

    public void Dispose() => free.Dispose();
}
