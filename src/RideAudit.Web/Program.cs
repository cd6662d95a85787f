// The worker calls what Bridge exports; the runtime only has to be up.
return;
