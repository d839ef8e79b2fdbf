# Completion of splice for fish. The program itself answers what may stand where the cursor is, so
# that ropes and kinds of --tables and --plug-in are among it and nothing is listed here.
function __splice_complete
    set -l given (commandline -opc)
    set -l program $given[1]
    set -e given[1]
    # A quote that is open is none of the word.
    set -l current (string unescape -- (commandline -ct); or string replace -r -- '^["\']' '' (commandline -ct))
    # Of --tables=DIR, what stands before the folder.
    set -l before (string match -r -- '^--[^=]*=' $current; or echo '')
    for answer in ($program complete $given $current 2>/dev/null)
        switch $answer
            case \tfiles
                printf '%s\n' $before(__fish_complete_path (string replace -- $before '' $current))
            case \tfolders
                printf '%s\n' $before(__fish_complete_directories (string replace -- $before '' $current))
            case '*'
                echo $answer
        end
    end
end
complete -c splice -f -a '(__splice_complete)'
