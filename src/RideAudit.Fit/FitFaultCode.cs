namespace RideAudit.Fit;

/// <summary>What is wrong at a place in a file.</summary>
public enum FitFaultCode
{
    /// <summary>A byte-order mark stands before the header; it is skipped.</summary>
    ByteOrderMark,

    /// <summary>The header is neither 12 nor 14 bytes long; the extra bytes are skipped.</summary>
    HeaderSizeUnusual,

    /// <summary>The header's own CRC does not agree with its first twelve bytes.</summary>
    HeaderCrcMismatch,

    /// <summary>The protocol's major version is above 2; it is read as version 2.</summary>
    ProtocolVersionUnknown,

    /// <summary>A header, but nothing that can be read behind it.</summary>
    PartWithoutData,

    /// <summary>The header says 0 bytes of data: the file was never finalised.</summary>
    DataSizeZero,

    /// <summary>The header says more data than the file holds.</summary>
    DataSizeTooLarge,

    /// <summary>The header says less data than the file holds, and messages go on behind it.</summary>
    DataSizeTooSmall,

    /// <summary>The closing CRC is not there or is cut.</summary>
    FileCrcMissing,

    /// <summary>The closing CRC does not agree with the bytes.</summary>
    FileCrcMismatch,

    /// <summary>The data end inside a message; the incomplete message is dropped.</summary>
    Truncated,

    /// <summary>Bytes follow the last part that are no FIT part; they are ignored.</summary>
    TrailingBytes,

    /// <summary>A part begins after bytes that do not belong to any part.</summary>
    PartFoundInTail,

    /// <summary>A data message uses a local type that was never defined, so its length is unknown.</summary>
    UndefinedLocalType,

    /// <summary>A definition that cannot be meant: byte order above 1, several unknown base types, many repeats.</summary>
    CorruptDefinition,

    /// <summary>A record's time jumps by more than a day and what follows does not agree with it: bytes are missing or added somewhere before.</summary>
    StreamSlipped,

    /// <summary>Reading goes on at this offset after a damaged stretch.</summary>
    Resynchronised,

    /// <summary>Messages just before a break whose time is far from their neighbours' were dropped.</summary>
    DoubtfulMessagesDropped,

    /// <summary>A field's size is not a multiple of its base type's; the field is skipped by its declared size.</summary>
    FieldSizeMismatch,

    /// <summary>A field of a base type that is not known; it is skipped by its declared size.</summary>
    UnknownBaseType,

    /// <summary>One field number is declared twice with different sizes and the data follow the larger; it is read so.</summary>
    RepeatedFieldWidened,

    /// <summary>A record without a time, and no time before it; kept with <see cref="Messages.RecordChannels.NoTime"/>, no timeline can place it.</summary>
    RecordWithoutTime,

    /// <summary>A developer field without description; it is skipped by its declared size.</summary>
    DeveloperFieldUndescribed,

    /// <summary>A developer field whose size does not fit its described type; it is skipped.</summary>
    DeveloperFieldSizeMismatch,

    /// <summary>A developer field described with an unknown base type; it is skipped.</summary>
    DeveloperBaseTypeUnknown,

    /// <summary>Compressed heart-rate times without an absolute one before them; they are skipped.</summary>
    HeartRateWithoutAnchor,

    /// <summary>A zone offset or local time outside any zone on earth; it is skipped.</summary>
    LocalTimeOutOfRange,

    /// <summary>Times count seconds since power-on instead of a date.</summary>
    ClockUnset,

    /// <summary>Records without session or without activity message: the recording was not closed properly.</summary>
    Incomplete,

    /// <summary>A cap of <see cref="FitDecodeOptions"/> was reached; the rest is not kept.</summary>
    LimitReached,
}
