@echo off
rem Starts Deadband with the Java that is there.
rem
rem   JAVA_HOME           the Java to use; otherwise the first java on the PATH
rem   DEADBAND_JAVA_OPTS  further JVM options; they win over the ones below
rem
rem No class archive here: there is no safe way to make one behind a batch file's back.

setlocal DisableDelayedExpansion
set "jar=%~dp0..\lib\deadband.jar"
if not exist "%jar%" (
    echo deadband: %jar% is missing: unpack the whole folder again, bin and lib together. 1>&2
    exit /b 70
)

if not defined JAVA_HOME goto :on_path
set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto :found
echo deadband: JAVA_HOME is %JAVA_HOME%, but there is no bin\java.exe in it. Correct or unset it. 1>&2
exit /b 70

:on_path
for %%j in (java.exe) do set "java=%%~$PATH:j"
if defined java goto :found
echo deadband: no Java found. Install Java 17 or newer (a JRE is enough), or set JAVA_HOME to where it is. 1>&2
exit /b 70

:found
set "major="
for %%j in ("%java%") do set "release=%%~dpj..\release"
if not exist "%release%" goto :tune
for /f "usebackq tokens=2 delims==" %%v in (`findstr /b "JAVA_VERSION=" "%release%"`) do (
    for /f "tokens=1 delims=." %%m in (%%v) do set "major=%%m"
)
if not defined major goto :tune
if %major% geq 17 goto :tune
echo deadband: the Java in %java% is too old. Install Java 17 or newer, or set JAVA_HOME to where it is. 1>&2
exit /b 70

:tune
rem One check is over before the big compiler pays; streams and long simulations want it.
set "tuning=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
for %%w in (%*) do (
    if "%%~w"=="simulate" set "tuning=-XX:+UseParallelGC"
    if "%%~w"=="propose" set "tuning=-XX:+UseParallelGC"
    if "%%~w"=="jsonl" set "tuning=-XX:+UseParallelGC"
    if "%%~w"=="--format=jsonl" set "tuning=-XX:+UseParallelGC"
)
if defined DEADBAND_JAVA_OPTS if not "%DEADBAND_JAVA_OPTS:GC=%"=="%DEADBAND_JAVA_OPTS%" set "tuning="

"%java%" %tuning% -Xlog:disable -Xlog:all=error:stderr -Dfile.encoding=UTF-8 %DEADBAND_JAVA_OPTS% -jar "%jar%" %*
exit /b %errorlevel%
