using System.Text;

namespace CircuitSchedule;

/// <summary>A file that appears under its name only when it is complete: until then it is written beside it, and taken away if the run is stopped.</summary>
internal sealed class OutputFile : IDisposable
{
    private readonly string path, unfinished;
    private bool complete;

    public OutputFile(string path, Encoding encoding)
    {
        this.path = path;
        unfinished = path + ".part";
        Text = new StreamWriter(unfinished, append: false, encoding);
    }

    public TextWriter Text { get; }

    /// <summary>Closes the file and gives it its name.</summary>
    public void Complete()
    {
        Text.Dispose();
        File.Move(unfinished, path, overwrite: true);
        complete = true;
    }

    public void Dispose()
    {
        Text.Dispose();
        if (!complete)
        {
            File.Delete(unfinished);
        }
    }
}
