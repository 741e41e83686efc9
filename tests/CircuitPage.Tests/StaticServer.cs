using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;

namespace CircuitPage.Tests;

/// <summary>A plain file server on the loopback address, the page in a folder of its own; it counts what it sends.</summary>
internal sealed class StaticServer : IDisposable
{
    private const string Folder = "/any/folder/";

    private static readonly Dictionary<string, string> Types = new()
    {
        [".html"] = "text/html", [".js"] = "text/javascript", [".css"] = "text/css", [".wasm"] = "application/wasm", [".json"] = "application/json",
    };

    private readonly HttpListener listener = new();
    private readonly string root;
    private readonly bool compresses;
    private long sent;

    /// <param name="root">The published files.</param>
    /// <param name="compresses">Whether it sends the brotli files that were published beside the others, as a server can that knows them.</param>
    public StaticServer(string root, bool compresses)
    {
        (this.root, this.compresses) = (root, compresses);
        Origin = $"http://127.0.0.1:{FreePort()}";
        listener.Prefixes.Add(Origin + "/");
        listener.Start();
        _ = Task.Run(Serve);
    }

    public string Origin { get; }

    public string Page => Origin + Folder;

    public long SentBytes => Interlocked.Read(ref sent);

    public ConcurrentQueue<string> Missing { get; } = new();

    public void Dispose() => listener.Close();

    private static int FreePort()
    {
        using TcpListener free = new(IPAddress.Loopback, 0);
        free.Start();
        return ((IPEndPoint)free.LocalEndpoint).Port;
    }

    private async Task Serve()
    {
        while (listener.IsListening)
        {
            try
            {
                HttpListenerContext context = await listener.GetContextAsync();
                _ = Task.Run(() => Answer(context));
            }
            catch (Exception closed) when (closed is HttpListenerException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    private async Task Answer(HttpListenerContext context)
    {
        using HttpListenerResponse response = context.Response;
        string asked = context.Request.Url!.AbsolutePath;
        string path = Path.Combine(root, asked.StartsWith(Folder, StringComparison.Ordinal) ? asked == Folder ? "index.html" : asked[Folder.Length..] : "none");
        if (!File.Exists(path))
        {
            Missing.Enqueue(asked);
            response.StatusCode = 404;
            return;
        }

        response.ContentType = Types.GetValueOrDefault(Path.GetExtension(path), "application/octet-stream");
        if (compresses && File.Exists(path + ".br"))
        {
            response.Headers["Content-Encoding"] = "br";
            path += ".br";
        }

        byte[] bytes = await File.ReadAllBytesAsync(path);
        Interlocked.Add(ref sent, bytes.Length);
        response.ContentLength64 = bytes.Length;
        await response.OutputStream.WriteAsync(bytes);
    }
}
