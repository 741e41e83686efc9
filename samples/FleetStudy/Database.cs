using System.Text.Json.Serialization;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace FleetStudy;

/// <summary>Where a study and the list of silos are kept.</summary>
internal enum DatabaseKind
{
    /// <summary>A file on this machine.</summary>
    Sqlite,

    /// <summary>A PostgreSQL server.</summary>
    Postgres,

    /// <summary>A Redis server.</summary>
    Redis,
}

/// <summary>A database by its kind and how to reach it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Connection">A file, or a connection string as its driver takes it.</param>
internal sealed record Database(DatabaseKind Kind, string Connection)
{
    /// <summary>The tables are in a schema of their own: another program's tables of the same names stay untouched.</summary>
    public const string Schema = "fleet_study";

    /// <summary>The name by which the provider knows the driver; for SQLite it is another driver's, and loads Microsoft.Data.Sqlite.</summary>
    [JsonIgnore]
    public string Invariant => Kind == DatabaseKind.Sqlite ? "System.Data.SQLite" : "Npgsql";

    /// <summary>The full connection string of an SQL database.</summary>
    /// <exception cref="ArgumentException">The text is not one.</exception>
    [JsonIgnore]
    public string Sql => Kind == DatabaseKind.Sqlite
        ? new SqliteConnectionStringBuilder { DataSource = Connection, DefaultTimeout = 30 }.ToString()
        : new NpgsqlConnectionStringBuilder(Connection) { SearchPath = Schema }.ToString();
}
