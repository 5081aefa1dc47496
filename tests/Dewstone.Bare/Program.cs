// A bare .NET program: what the start of a command is measured against.
Console.WriteLine("0.1.0");
