using RideAudit.Tests.Support;

namespace RideAudit.Tests.Ingest;

/// <summary>Runs over real recordings, which are not part of the repository.</summary>
public sealed class RecordedFilesTests
{
    [RecordingsFact]
    public void Every_recording_gives_rides_or_one_notice_and_never_an_exception() => RecordingChecks.RidesOrOneNotice(RecordingsFactAttribute.Folder);

    [RecordingsFact]
    public void Power_on_the_grid_is_the_power_of_the_records() => Assert.NotEqual(0, RecordingChecks.PowerIsKept(RecordingsFactAttribute.Folder));

    // Average 201.42 W and normalised power 228.39 W with missing power dropped; the device itself stored 201 W and 228 W. Worked out from this recording by a script of its own.
    [RecordingsFact]
    public void The_indoor_ride_152632d5_agrees_with_its_device_within_1_percent()
    {
        RecordingChecks.MeanAndNormalisedAgree(At("152632d5.fit"), 201.42, 228.39);
        RecordingChecks.MeanAndNormalisedAgree(At("152632d5.fit"), 201, 228);
    }

    [RecordingsFact]
    public void The_triathlon_f8d2d84b_is_five_activities_of_which_one_is_a_ride_with_heart_rate() => RecordingChecks.OneRideOfFive(At("f8d2d84b.fit"));

    [RecordingsFact]
    public void A_clock_that_was_never_set_is_said_in_77337cf2_and_e92439a9()
    {
        RecordingChecks.ClockNotSet(At("77337cf2.fit"));
        RecordingChecks.ClockNotSet(At("e92439a9.fit"));
    }

    private static string At(string name) => Path.Combine(RecordingsFactAttribute.Folder, name);
}
