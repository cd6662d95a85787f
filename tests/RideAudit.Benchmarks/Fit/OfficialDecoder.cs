using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace RideAudit.Benchmarks.Fit;

/// <summary>A node process that decodes one file again and again with the official JavaScript decoder.</summary>
internal sealed class OfficialDecoder : IDisposable
{
    private readonly Process node;
    private readonly string path;

    private OfficialDecoder(Process node, string path) => (this.node, this.path) = (node, path);

    public static OfficialDecoder Start(byte[] file, string mode)
    {
        string path = Path.GetTempFileName();
        File.WriteAllBytes(path, file);
        ProcessStartInfo start = new("node", [Script(), path, mode]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        return new OfficialDecoder(Process.Start(start)!, path);
    }

    public int Decode()
    {
        node.StandardInput.WriteLine();
        return int.Parse(node.StandardOutput.ReadLine()!, CultureInfo.InvariantCulture);
    }

    public void Dispose()
    {
        node.StandardInput.Close();
        node.WaitForExit();
        node.Dispose();
        File.Delete(path);
    }

    private static string Script([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "crosschecks", "decode-loop.mjs"));
}
