import fc from "fast-check";

// On the build server the laws are tried on the same cases each time; on a developer's machine on new ones.
if (process.env["CI"]) fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 1 });
