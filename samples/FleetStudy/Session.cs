using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace FleetStudy;

/// <summary>The cluster of one run: this process alone, processes of this machine, or a silo among those of other machines.</summary>
internal sealed class Session : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(4);

    private readonly IHost host;
    private readonly LocalSilos? silos;

    private Session(IHost host, LocalSilos? silos) => (this.host, this.silos) = (host, silos);

    public IGrainFactory Grains => host.Services.GetRequiredService<IGrainFactory>();

    /// <summary>Starts what the options ask for.</summary>
    public static async Task<Session> Start(Options options, TextWriter notes, CancellationToken stop)
    {
        Database database = options.Database;
        SiloSettings settings = new()
        {
            Database = database,

            // A file belongs to one run at a time: a name of its own, so that silos of an earlier run that was killed are nobody's to wait for.
            Cluster = database.Kind == DatabaseKind.Sqlite ? $"fleet-{Guid.NewGuid():N}" : options.Cluster,
            Address = options.Address,
            IsAlone = database.Kind == DatabaseKind.Sqlite && options.Silos == 1,
            Cores = Math.Max(1, Environment.ProcessorCount / options.Silos),
        };
        if (options.Silos == 1)
        {
            return new Session(await Silo.Start(settings, stop), null);
        }

        LocalSilos silos = new(settings, options.Silos, notes);
        try
        {
            await silos.Start(stop);
            return new Session(await Silo.StartClient(database, settings.Cluster, stop), silos);
        }
        catch
        {
            await silos.DisposeAsync();
            throw;
        }
    }

    public Task Watch(CancellationToken stop) => silos?.Watch(stop) ?? Task.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        await Task.WhenAll(Silo.Stop(host, Patience), silos?.DisposeAsync().AsTask() ?? Task.CompletedTask);

        host.Dispose();
    }
}
