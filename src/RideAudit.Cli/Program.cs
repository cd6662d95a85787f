Console.WriteLine("rideaudit");
