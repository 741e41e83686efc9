using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Orleans.Configuration;
using Orleans.Serialization;
using Orleans.Storage;
using StackExchange.Redis;

namespace FleetStudy;

/// <summary>Builds the hosts: a silo that calculates, or a client that only asks.</summary>
internal static class Silo
{
    private const string Service = "fleet-study";

    // Somebody else may take a free port before the silo does.
    private const int MostStarts = 5;

    /// <summary>Starts a silo on free ports.</summary>
    public static async Task<IHost> Start(SiloSettings settings, CancellationToken stop)
    {
        for (int attempt = 1; ; attempt++)
        {
            IHost host = Build(settings);
            try
            {
                await host.StartAsync(stop);
                return host;
            }
            catch (Exception problem)
            {
                host.Dispose();
                if (Has(problem, SocketError.AddressNotAvailable))
                {
                    throw new UsageException($"--address must be an address of this machine; it was '{settings.Address}'.");
                }

                if (attempt == MostStarts || !Has(problem, SocketError.AddressAlreadyInUse))
                {
                    throw;
                }
            }
        }
    }

    /// <summary>Starts a client of the silos of a cluster.</summary>
    public static async Task<IHost> StartClient(Database database, string cluster, CancellationToken stop)
    {
        HostApplicationBuilder builder = Quiet();
        builder.UseOrleansClient(client =>
        {
            client.Configure<ClusterOptions>(o => (o.ServiceId, o.ClusterId) = (Service, cluster));
            client.Configure<GatewayOptions>(o => o.GatewayListRefreshPeriod = TimeSpan.FromSeconds(2));
            client.Configure<ClientMessagingOptions>(o => o.ResponseTimeout = TimeSpan.FromSeconds(5));
            client.UseConnectionRetryFilter(async (_, token) =>
            {
                await Task.Delay(300, token);
                return true;
            });
            _ = database.Kind == DatabaseKind.Redis
                ? client.UseRedisClustering(o => o.ConfigurationOptions = ConfigurationOptions.Parse(database.Connection))
                : client.UseAdoNetClustering(o => (o.Invariant, o.ConnectionString) = (database.Invariant, database.Sql));
        });
        IHost host = builder.Build();
        await host.StartAsync(stop);
        return host;
    }

    /// <summary>Stops a host, but does not wait for it longer than that.</summary>
    public static async Task Stop(IHost host, TimeSpan patience)
    {
        using CancellationTokenSource enough = new(patience);
        try
        {
            await host.StopAsync(enough.Token).WaitAsync(patience);
        }
        catch (Exception ignored) when (ignored is OperationCanceledException or TimeoutException or OrleansException)
        {
            // What counts has been kept before.
        }
    }

    private static IHost Build(SiloSettings settings)
    {
        HostApplicationBuilder builder = Quiet();
        builder.Services.AddSingleton(new Lanes(settings.Cores));
        (int siloPort, int gatewayPort) = FreePorts();
        builder.UseOrleans(silo =>
        {
            Cluster(silo, settings, siloPort, gatewayPort);
            Store(silo, settings.Database);
            silo.Configure<ClusterMembershipOptions>(o =>
            {
                // Three probes of a second each go unanswered before a silo is suspected; after a crash of all, the old list is stale within some 15 s.
                o.ProbeTimeout = TimeSpan.FromSeconds(1);
                o.TableRefreshTimeout = TimeSpan.FromSeconds(5);
                o.IAmAliveTablePublishTimeout = TimeSpan.FromSeconds(5);
            });
        });
        return builder.Build();
    }

    private static void Cluster(ISiloBuilder silo, SiloSettings settings, int siloPort, int gatewayPort)
    {
        if (settings.IsAlone)
        {
            silo.UseLocalhostClustering(siloPort, gatewayPort, null, Service, settings.Cluster);
            return;
        }

        silo.Configure<ClusterOptions>(o => (o.ServiceId, o.ClusterId) = (Service, settings.Cluster));
        silo.ConfigureEndpoints(IPAddress.Parse(settings.Address), siloPort, gatewayPort);
        Database database = settings.Database;
        _ = database.Kind == DatabaseKind.Redis
            ? silo.UseRedisClustering(o => o.ConfigurationOptions = ConfigurationOptions.Parse(database.Connection))
            : silo.UseAdoNetClustering(o => (o.Invariant, o.ConnectionString) = (database.Invariant, database.Sql));
    }

    // Orleans' own serialiser: names and numbers of members, which stay when a type is moved or renamed.
    private static void Store(ISiloBuilder silo, Database database) => _ = database.Kind == DatabaseKind.Redis
        ? silo.AddRedisGrainStorage(Coordinator.Storage, o => o.Configure<Serializer>((options, serializer) =>
            (options.ConfigurationOptions, options.GrainStorageSerializer) = (ConfigurationOptions.Parse(database.Connection), new OrleansGrainStorageSerializer(serializer))))
        : silo.AddAdoNetGrainStorage(Coordinator.Storage, o => o.Configure<Serializer>((options, serializer) =>
            (options.Invariant, options.ConnectionString, options.GrainStorageSerializer) = (database.Invariant, database.Sql, new OrleansGrainStorageSerializer(serializer))));

    // No settings files, no log, no signals: the program answers for itself.
    private static HostApplicationBuilder Quiet()
    {
        HostApplicationBuilder builder = new(new HostApplicationBuilderSettings { DisableDefaults = true });
        builder.Services.AddSingleton<IHostLifetime, NoSignals>();
        return builder;
    }

    private static (int Silo, int Gateway) FreePorts()
    {
        using TcpListener first = new(IPAddress.Loopback, 0), second = new(IPAddress.Loopback, 0);
        first.Start();
        second.Start();
        return (((IPEndPoint)first.LocalEndpoint).Port, ((IPEndPoint)second.LocalEndpoint).Port);
    }

    private static bool Has(Exception problem, SocketError error) =>
        (problem is SocketException socket && socket.SocketErrorCode == error) || (problem.InnerException is { } inner && Has(inner, error))
        || (problem is AggregateException many && many.InnerExceptions.Any(one => Has(one, error)));

    private sealed class NoSignals : IHostLifetime
    {
        public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
