namespace RideAudit.Cli;

/// <summary>Why something could not be written, and what to do, without the names the program made up for itself.</summary>
internal static class WriteFault
{
    private const int NoSpace = 28;
    private const int ReadOnlyDisk = 30;
    private const int NameTooLong = 36;
    private const int WindowsDiskFull = unchecked((int)0x80070070);
    private const int WindowsHandleDiskFull = unchecked((int)0x80070027);
    private const int WindowsSharing = unchecked((int)0x80070020);

    /// <summary>One or two sentences.</summary>
    /// <param name="fault">What the system threw.</param>
    public static string Of(Exception fault) => fault switch
    {
        UnauthorizedAccessException => "you may not write there. Choose another place.",
        DirectoryNotFoundException => "its folder is not there. Make the folder first, or choose another.",
        PathTooLongException => "the name is too long. Choose a shorter one.",
        _ => fault.HResult switch
        {
            NoSpace or WindowsDiskFull or WindowsHandleDiskFull => "the disk is full. Make room, or choose another place.",
            ReadOnlyDisk => "that disk can only be read. Choose another place.",
            NameTooLong => "the name is too long. Choose a shorter one.",
            WindowsSharing => "another program has it open. Close it there, or choose another name.",
            _ => "the system refused. Choose another place.",
        },
    };
}
