using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace RideAudit.Benchmarks.Fit;

/// <summary>A node process that decodes one file again and again with the official JavaScript decoder.</summary>
internal sealed class OfficialDecoder : IDisposable
{
    private readonly Process _node;
    private readonly string _path;

    private OfficialDecoder(Process node, string path) => (_node, _path) = (node, path);

    public static OfficialDecoder Start(byte[] file, string mode)
    {
        var path = Path.GetTempFileName();
        File.WriteAllBytes(path, file);
        ProcessStartInfo start = new("node", [Script(), path, mode]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        return new OfficialDecoder(Process.Start(start)!, path);
    }

    public int Decode()
    {
        _node.StandardInput.WriteLine();
        return int.Parse(_node.StandardOutput.ReadLine()!, CultureInfo.InvariantCulture);
    }

    public void Dispose()
    {
        _node.StandardInput.Close();
        _node.WaitForExit();
        _node.Dispose();
        File.Delete(_path);
    }

    private static string Script([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "crosschecks", "decode-loop.mjs"));
}
