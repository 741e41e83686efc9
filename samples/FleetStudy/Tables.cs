using System.Data.Common;
using Microsoft.Data.Sqlite;
using Npgsql;
using StackExchange.Redis;

namespace FleetStudy;

/// <summary>Makes the tables and statements that the SQL providers of the cluster work with; what is there stays. Finds out, too, whether the database answers.</summary>
internal static class Tables
{
    private const string QueryMark = "-- query ";

    public static void Prepare(Database database)
    {
        if (database.Kind == DatabaseKind.Redis)
        {
            // It needs no tables, but must answer.
            using ConnectionMultiplexer asked = ConnectionMultiplexer.Connect(database.Connection);
            return;
        }

        bool isFile = database.Kind == DatabaseKind.Sqlite;
        using DbConnection connection = isFile ? new SqliteConnection(database.Sql) : new NpgsqlConnection(database.Sql);
        connection.Open();
        string[] parts = Script(isFile ? "sqlite.sql" : "postgres.sql").Split(QueryMark);
        using DbTransaction whole = connection.BeginTransaction();
        if (!isFile)
        {
            // Two machines that start at once would both find nothing and both create.
            Execute(connection, whole, $"SELECT pg_advisory_xact_lock(hashtext('{Database.Schema}'))");
            Execute(connection, whole, $"CREATE SCHEMA IF NOT EXISTS {Database.Schema}");
        }

        Execute(connection, whole, parts[0]);
        foreach (string part in parts[1..])
        {
            int end = part.IndexOf('\n', StringComparison.Ordinal);
            Execute(connection, whole, "INSERT INTO OrleansQuery (QueryKey, QueryText) VALUES (@key, @text) ON CONFLICT (QueryKey) DO UPDATE SET QueryText = @text", ("key", part[..end].Trim()), ("text", part[end..].Trim()));
        }

        whole.Commit();
        if (isFile)
        {
            // Readers and the writer of a file do not wait for each other.
            Execute(connection, null, "PRAGMA journal_mode = WAL");
        }
    }

    private static string Script(string name)
    {
        using StreamReader reader = new(typeof(Tables).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    private static void Execute(DbConnection connection, DbTransaction? transaction, string text, params (string Name, string Value)[] parameters)
    {
        using DbCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // The text is the program's own.
        command.CommandText = text;
#pragma warning restore CA2100
        command.Transaction = transaction;
        foreach ((string name, string value) in parameters)
        {
            DbParameter parameter = command.CreateParameter();
            (parameter.ParameterName, parameter.Value) = (name, value);
            command.Parameters.Add(parameter);
        }

        command.ExecuteNonQuery();
    }
}
